import { InputError, showValue } from '../problem/index.ts';
import { STEPS } from '../time/index.ts';
import type { Sensors } from './sensors.ts';

/** Blinds moved together by one remote channel: all of them stand alike. */
export interface BlindGroup {
  id: string;
  name: string;
  /** Number of the channel on the remote. */
  channel: number;
  /** Id of the schedule that moves it. */
  schedule: string;
  /** Id of the opening whose sensors count; `any`: the strongest reading of all members. */
  lead: string;
}

/** One blind of a group. */
export interface GroupMember extends Pick<Sensors, 'sunOnFacade' | 'facadeIrradiance'> {
  /** Id of its opening. */
  opening: string;
  /** Wind speed above which it must be raised, m/s; absent where wind does not matter. */
  windLimit?: number;
}

/** What the controller of a group goes by. */
export type GroupSensors = Omit<GroupMember, 'opening'>;

/**
 * Sensors of a group: those of its leading opening, or the sun on any member and the strongest
 * irradiance. The wind limit is the lowest of all members, whoever leads. Arrays are those of the
 * lead themselves where one opening decides.
 * @param lead id of an opening of the group, or `any`
 * @throws InputError for a group without members or a lead that is not one of them
 */
export function groupSensors(members: readonly GroupMember[], lead = 'any'): GroupSensors {
  const led = lead === 'any' ? members : members.filter(({ opening }) => opening === lead);
  if (led.length === 0) {
    throw new InputError({
      path: 'lead',
      message:
        members.length === 0 ? 'The group moves no blind' : 'No opening of the group leads it',
      value: showValue(lead),
      allowed: ['any', ...members.map(({ opening }) => opening)].join(', '),
      fix: 'Name an opening of the group, or take "any".',
    });
  }
  const limits = members.flatMap(({ windLimit }) => windLimit ?? []);
  const windLimit = limits.length > 0 ? Math.min(...limits) : undefined;
  return { ...strongest(led), windLimit };
}

function strongest(members: readonly GroupMember[]): Omit<GroupSensors, 'windLimit'> {
  const [first, ...others] = members;
  if (others.length === 0) {
    return { sunOnFacade: first.sunOnFacade, facadeIrradiance: first.facadeIrradiance };
  }
  const sunOnFacade = first.sunOnFacade.slice();
  const facadeIrradiance = first.facadeIrradiance.slice();
  for (const other of others) {
    for (let i = 0; i < STEPS; i++) {
      sunOnFacade[i] |= other.sunOnFacade[i];
      if (other.facadeIrradiance[i] > facadeIrradiance[i]) {
        facadeIrradiance[i] = other.facadeIrradiance[i];
      }
    }
  }
  return { sunOnFacade, facadeIrradiance };
}

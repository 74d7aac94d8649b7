import type { Blind } from './types.ts';

/** Cautions a reader of results about blinds must see; local codes and trained fitters decide. */
export const WIND_CAUTION =
  'External slats, fabrics and awnings must be raised in strong wind (common practice: 8 to ' +
  "13 m/s, slats and guided screens higher than awnings); the maker's limit for the size ordered " +
  'rules, and a wind sensor should act before any schedule.';

export const ESCAPE_CAUTION =
  'A lowered blind, shutter or fixed screen can block a window or door that is meant for escape or ' +
  'rescue: keep one that opens by hand without power, and follow the local fire and building codes.';

export const HEAT_TRAP_CAUTION =
  'A blind on the room side or in a closed cavity traps heat against the glass: partly shaded or ' +
  'highly absorbing panes can crack from thermal stress. Have the glass supplier check it.';

export const HEIGHT_CAUTION =
  'Fitting, cleaning and mending blinds outside above the ground is work at height: leave it to ' +
  'trained fitters with fall protection and plan how the blind will be reached.';

/** What can hurt at a blind; `CAUTIONS` and the language files tell it. */
export type BlindCaution = 'wind' | 'escape' | 'heatTrap' | 'height';

export const CAUTIONS: Record<BlindCaution, string> = {
  wind: WIND_CAUTION,
  escape: ESCAPE_CAUTION,
  heatTrap: HEAT_TRAP_CAUTION,
  height: HEIGHT_CAUTION,
};

/** The cautions that go with one blind, most urgent first. */
export function cautionsOf(blind: Blind): BlindCaution[] {
  const outside = blind.position === 'external';
  const windy = outside && (blind.windLimit !== undefined || blind.kind !== 'shutter');
  const escape = outside || blind.kind === 'shutter';
  const trap = blind.position === 'internal' || (blind.position === 'between' && !isVented(blind));
  return [
    ...(windy ? (['wind'] as const) : []),
    ...(escape ? (['escape'] as const) : []),
    ...(trap ? (['heatTrap'] as const) : []),
    ...(outside ? (['height'] as const) : []),
  ];
}

/** The same in English sentences. */
export function blindCautions(blind: Blind): string[] {
  return cautionsOf(blind).map((caution) => CAUTIONS[caution]);
}

const isVented = (blind: Blind): boolean => (blind.ventFactor ?? 0) >= 0.5;

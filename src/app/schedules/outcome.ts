import { shareStopped } from '../../../lib/study/index.ts';
import type { RoomSummary, StudySummary } from '../../worker/api.ts';

/** What a schedule does for the openings it moves. Energy in kWh, shares 0 to 1. */
export interface Outcome {
  /** Gain of the summer months without and with shading. */
  summerWithout: number;
  summerWith: number;
  /** Part of the summer gain that is kept out. */
  stopped: number;
  /** Gain of the winter months that is kept out too. */
  winterLost: number;
  winterWithout: number;
  /** Of one blind: all of a group move alike. */
  moves: number;
  daylightHoursLowered: number;
  hoursRaisedByWind: number;
  rooms: RoomHeat[];
}

/** Hours over the project's limit in a room with one of the openings. */
export interface RoomHeat {
  id: string;
  name: string;
  without: number;
  with: number;
}

/** Adds up a run for the members of a target; undefined where the run does not know them yet. */
export function outcomeOf(
  summary: Pick<StudySummary, 'openings' | 'rooms'>,
  members: readonly string[],
): Outcome | undefined {
  const openings = summary.openings.filter((o) => members.includes(o.id));
  if (openings.length < members.length || openings.length === 0) return undefined;
  const sum = (pick: (o: (typeof openings)[number]) => number) =>
    openings.reduce((total, o) => total + pick(o), 0);
  const summerWithout = sum((o) => o.sums.without.summer);
  const summerWith = sum((o) => o.sums.with.summer);
  const winterWithout = sum((o) => o.sums.without.winter);
  const blind = openings.find((o) => o.blind)?.blind;
  return {
    summerWithout,
    summerWith,
    stopped: shareStopped(summerWithout, summerWith),
    winterLost: winterWithout - sum((o) => o.sums.with.winter),
    winterWithout,
    moves: blind?.moves ?? 0,
    daylightHoursLowered: blind?.daylightHoursLowered ?? 0,
    hoursRaisedByWind: blind?.hoursRaisedByWind ?? 0,
    rooms: summary.rooms.filter((room) => hasOne(room, members)).map(heatOf),
  };
}

function hasOne(room: RoomSummary, members: readonly string[]): boolean {
  return room.openings.some((id) => members.includes(id));
}

function heatOf({ id, name, without, with: shaded }: RoomSummary): RoomHeat {
  return { id, name, without: without.hotHours, with: shaded.hotHours };
}

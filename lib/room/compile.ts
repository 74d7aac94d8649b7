import { InputError } from '../problem/index.ts';
import type { YearCalendar } from '../time/index.ts';
import { airExchange, airHeatCapacity, type AirExchange } from './air.ts';
import { sashArea } from './airing.ts';
import { fiveResistanceNetwork } from './fiveResistance.ts';
import { crankNicolsonHours, exactHours, type HourResponse } from './hourly.ts';
import { layeredNetwork } from './layered.ts';
import { networkModes } from './network.ts';
import { occupiedYear, profileYear, spanYear } from './tables.ts';
import type { AiringRule, Room, RoomOpening } from './types.ts';
import { validateRoom } from './validate.ts';

/** `layered`, the model of choice, or the simple hourly method of EN ISO 13790 for comparison. */
export type RoomModelKind = 'layered' | 'fiveResistance';

/**
 * Modes that move an hour's mean by less than this are left to follow at once, K: tried against
 * finite differences, where rooms of three to seven modes come as close as those of thirty.
 */
export const MODE_TOLERANCE = 0.15;

export interface CompileOptions {
  /** Temperature under ground parts that have none of their own: the year's mean outdoors, C. */
  groundTemperature: number;
  /** Of the site, m: thin air carries less heat; 0 where absent. */
  elevation?: number;
  /** `layered` where absent. */
  kind?: RoomModelKind;
  /** Modes that move an hour's mean by less than this follow at once, K; MODE_TOLERANCE where absent. */
  tolerance?: number;
}

/** An airing rule with its hours and its sashes looked up. */
export interface CompiledRule {
  rule: AiringRule;
  /** 1 in the hours whose month and clock allow it; HOURS values. */
  allowed: Uint8Array;
  /** Area opened at each of the room's openings when tilted and turned, m2; 0 where not in the rule. */
  tilted: Float64Array;
  turned: Float64Array;
}

/** A room made ready for stepping: everything that does not change from hour to hour. */
export interface RoomModel {
  room: Room;
  openings: readonly RoomOpening[];
  kind: RoomModelKind;
  response: HourResponse;
  /** Operative temperature = airWeight x air + (1 - airWeight) x radiant. */
  airWeight: number;
  exchange: AirExchange;
  /** J/m3K */
  airHeatCapacity: number;
  /** W in each hour; HOURS values. */
  people: Float64Array;
  appliances: Float64Array;
  occupied: Uint8Array;
  rules: readonly CompiledRule[];
  calendar: YearCalendar;
}

/**
 * Makes a room ready for stepping. Operative temperature is the mean of air and mean radiant
 * temperature (ISO 7726:1998, for air slower than 0.2 m/s); in the five-resistance model
 * 0.3 air + 0.7 surface node (EN ISO 13790:2008, C.12).
 *
 * @throws InputError for what `validateRoom` finds wrong
 */
export function compileRoom(
  room: Room,
  openings: readonly RoomOpening[],
  calendar: YearCalendar,
  options: CompileOptions,
): RoomModel {
  const { problems } = validateRoom(room, openings);
  if (problems.length > 0) throw new InputError(problems);
  const kind = options.kind ?? 'layered';
  const heatCapacity = airHeatCapacity(options.elevation ?? 0);
  const build = kind === 'layered' ? layeredNetwork : fiveResistanceNetwork;
  const modes = networkModes(build(room, openings, options.groundTemperature));
  return {
    room,
    openings,
    kind,
    response:
      kind === 'layered'
        ? exactHours(modes, room.floorArea, options.tolerance ?? MODE_TOLERANCE)
        : crankNicolsonHours(modes),
    airWeight: kind === 'layered' ? 0.5 : 0.3,
    exchange: airExchange(room, heatCapacity),
    airHeatCapacity: heatCapacity,
    people: profileYear(room.people, calendar),
    appliances: profileYear(room.appliances, calendar),
    occupied: occupiedYear(room.occupied, calendar),
    rules: room.airing.map((rule) => compileRule(rule, openings, calendar)),
    calendar,
  };
}

function compileRule(
  rule: AiringRule,
  openings: readonly RoomOpening[],
  calendar: YearCalendar,
): CompiledRule {
  const area = (position: 'tilt' | 'turn') =>
    Float64Array.from(openings, (o) =>
      rule.openings === undefined || rule.openings.includes(o.id)
        ? sashArea(o.airing, position)
        : 0,
    );
  return {
    rule,
    allowed: spanYear(calendar, rule.clock, rule.months),
    tilted: area('tilt'),
    turned: area('turn'),
  };
}

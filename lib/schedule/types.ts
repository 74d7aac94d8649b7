/** A clock time in whole minutes after midnight, quarter hours only, 0 to 1440. */
export type ClockMinutes = number;

/** A threshold that holds on until the value has crossed back past the release. */
export interface Trigger {
  /** Rule starts to hold at or beyond this value. */
  at: number;
  /** Rule stops to hold at or beyond this value on the way back; the gap is the hysteresis. */
  release: number;
}

/** All conditions of a rule must hold. An absent condition always holds. */
export interface RuleConditions {
  /** Months 1 to 12. */
  months?: number[];
  /** First and last day, `MM-DD`, both included; may run over the turn of the year. */
  dates?: { from: string; to: string };
  /** ISO weekdays, 1 Monday to 7 Sunday. */
  weekdays?: number[];
  /**
   * Local clock; equal means all day, `to` before `from` runs past midnight. The hours after
   * midnight belong to the day before: its month, date and weekday count.
   */
  clock?: { from: ClockMinutes; to: ClockMinutes };
  /**
   * Any of these clock spans instead of one: what painting a grid gives. A span past midnight wraps
   * inside its month.
   */
  grid?: { month: number; from: ClockMinutes; to: ClockMinutes }[];
  /** The sun is in front of the facade and above its horizon. */
  sunOnFacade?: boolean;
  /** Global irradiance on the facade, W/m2. */
  irradianceAbove?: Trigger;
  irradianceBelow?: Trigger;
  /** Outdoor dry-bulb temperature, C. */
  outdoorAbove?: Trigger;
  outdoorBelow?: Trigger;
  /** Room operative temperature, C. */
  roomAbove?: Trigger;
  roomBelow?: Trigger;
}

/** What a rule does with the blind while it is the first that holds. */
export type RuleAction =
  | { kind: 'raise' }
  /** Down by `share` of the glass height, 1 where absent; slats at their standing angle. */
  | { kind: 'lower'; share?: number }
  /** Down with slats at an angle, degrees. */
  | { kind: 'tilt'; angle: number; share?: number }
  /** Down with slats following the cut-off angle. */
  | { kind: 'track'; share?: number };

export interface Rule {
  id: string;
  name?: string;
  when: RuleConditions;
  then: RuleAction;
}

/** Rules in order, the first that holds decides; raised where none does. */
export interface Schedule {
  id: string;
  name: string;
  rules: Rule[];
  /** Least time between two moves, minutes; wind does not wait for it. */
  minMinutesBetweenMoves: number;
}

import { STEPS } from '../time/index.ts';

/** Counts of one run through the year. */
export interface RunCounts {
  /** Raising, lowering, another share or another fixed tilt; not the turning of slats that track. */
  moves: number;
  /** Steps held up by wind that the rules wanted lowered. */
  stepsRaisedByWind: number;
  /** Wanted moves that had to wait for the least time between moves. */
  delays: number;
  /** Steps they waited. */
  stepsDelayed: number;
}

/** Where a blind stands and what it remembers from step to step. */
export interface BlindState extends RunCounts {
  /** Number of the action it carries out. */
  action: number;
  /** Steps since its last move. */
  sinceMove: number;
  /** 1 while a wanted move waits. */
  waiting: number;
}

/** A raised blind that is free to move. */
export function raisedBlind(): BlindState {
  return {
    moves: 0,
    stepsRaisedByWind: 0,
    delays: 0,
    stepsDelayed: 0,
    action: 0,
    sinceMove: STEPS,
    waiting: 0,
  };
}

export function clearCounts(blind: RunCounts): void {
  blind.moves = 0;
  blind.stepsRaisedByWind = 0;
  blind.delays = 0;
  blind.stepsDelayed = 0;
}

export function copyBlind(from: BlindState, to: BlindState): void {
  to.moves = from.moves;
  to.stepsRaisedByWind = from.stepsRaisedByWind;
  to.delays = from.delays;
  to.stepsDelayed = from.stepsDelayed;
  to.action = from.action;
  to.sinceMove = from.sinceMove;
  to.waiting = from.waiting;
}

/**
 * Takes a blind through one step and gives the action it then carries out. Wind raises it at once;
 * any other move waits until `minSteps` have passed since the last one, wind's included.
 */
export function advance(blind: BlindState, wish: number, windy: number, minSteps: number): number {
  let next = wish;
  if (windy !== 0) {
    if (wish !== 0) blind.stepsRaisedByWind++;
    next = 0;
  }
  if (next === blind.action) {
    blind.waiting = 0;
  } else if (windy !== 0 || blind.sinceMove >= minSteps) {
    blind.action = next;
    blind.sinceMove = 0;
    blind.waiting = 0;
    blind.moves++;
  } else {
    blind.delays += 1 - blind.waiting;
    blind.waiting = 1;
    blind.stepsDelayed++;
  }
  blind.sinceMove++;
  return blind.action;
}

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
export interface DriveState extends RunCounts {
  /** Number of the action it stands in. */
  action: number;
  /** Steps since its last move. */
  sinceMove: number;
  /** Whether a wanted move waits. */
  waiting: boolean;
}

/** A raised blind that is free to move, with the least steps between two moves. */
export function raised(minSteps: number): DriveState {
  return {
    moves: 0,
    stepsRaisedByWind: 0,
    delays: 0,
    stepsDelayed: 0,
    action: 0,
    sinceMove: minSteps,
    waiting: false,
  };
}

export function clearCounts(counts: RunCounts): void {
  counts.moves = 0;
  counts.stepsRaisedByWind = 0;
  counts.delays = 0;
  counts.stepsDelayed = 0;
}

/**
 * Takes a blind through `steps` steps of one wish, all of them windy or none. Wind raises it at
 * once; any other move waits until `minSteps` have passed since the last one, wind's included.
 * @returns how many of the steps pass before it stands as wished
 */
export function follow(
  blind: DriveState,
  wish: number,
  windy: boolean,
  steps: number,
  minSteps: number,
): number {
  let next = wish;
  if (windy && wish !== 0) {
    blind.stepsRaisedByWind += steps;
    next = 0;
  }
  if (next === blind.action) {
    blind.waiting = false;
    blind.sinceMove += steps;
    return 0;
  }
  const wait = windy ? 0 : Math.min(Math.max(minSteps - blind.sinceMove, 0), steps);
  if (wait > 0 && !blind.waiting) blind.delays++;
  blind.stepsDelayed += wait;
  blind.waiting = wait === steps;
  if (blind.waiting) {
    blind.sinceMove += steps;
  } else {
    blind.action = next;
    blind.sinceMove = steps - wait;
    blind.moves++;
  }
  return wait;
}

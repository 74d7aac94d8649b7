import { gainOfOpenings, hemisphereOf, meanViewHoursLost, sunUpSteps } from '../decide/index.ts';
import { moveStatistics } from '../schedule/index.ts';
import type { Schedule } from '../schedule/index.ts';
import type { Engine, StudyInput, StudyResult } from '../study/index.ts';
import type { TargetInHand } from './target.ts';
import { withSchedule } from './target.ts';
import type { SearchFigures, SearchWeights } from './types.ts';
import { priceOf } from './weights.ts';

/** A schedule that has been run. */
export interface Judged {
  schedule: Schedule;
  figures: SearchFigures;
}

/** Runs schedules on one target and says what they come to. */
export interface ScheduleJudge {
  /** The target's blinds raised all year. */
  up: { result: StudyResult; figures: SearchFigures };
  hemisphere: 'north' | 'south';
  /** 1 at the steps with the sun up; STEPS values. */
  sunUp: Uint8Array;
  /** Studies run so far; a schedule met before costs none. */
  readonly runs: number;
  of(schedule: Schedule): SearchFigures;
  /** The study of a schedule just run, which the engine has kept. */
  again(schedule: Schedule): StudyResult;
  /** The study of a schedule, with its hours. */
  study(schedule: Schedule): StudyResult;
  /** The house as planned. */
  planned(): { result: StudyResult; figures: SearchFigures };
}

export const RAISED: Schedule = {
  id: 'always-up',
  name: 'Always up',
  rules: [],
  minMinutesBetweenMoves: 0,
};

export function createJudge(
  engine: Engine,
  input: StudyInput,
  inHand: TargetInHand,
  weights: SearchWeights,
  reserve = 0,
): ScheduleJudge {
  const known = new Map<string, SearchFigures>();
  let runs = 0;
  const run = (project: StudyInput['project']) => {
    runs++;
    return engine.run({ ...input, project });
  };
  const planOf = (schedule: Schedule) => withSchedule(input.project, inHand.target, schedule);
  const study = (schedule: Schedule) => run(planOf(schedule));
  const result = study(RAISED);
  const sunUp = sunUpSteps(result);
  const figuresOf = (of: StudyResult) => figures(of, result, inHand, { weights, reserve, sunUp });
  const up = { result, figures: figuresOf(result) };
  return {
    up,
    hemisphere: hemisphereOf(result.place.latitude),
    sunUp,
    get runs() {
      return runs;
    },
    of(schedule) {
      const key = JSON.stringify([schedule.rules, schedule.minMinutesBetweenMoves]);
      let found = known.get(key);
      if (!found) known.set(key, (found = figuresOf(study(schedule))));
      return found;
    },
    again: (schedule) => engine.run({ ...input, project: planOf(schedule) }),
    study,
    planned() {
      const asIs = run(input.project);
      return { result: asIs, figures: figuresOf(asIs) };
    },
  };
}

function figures(
  result: StudyResult,
  up: StudyResult,
  { openings, rooms }: TargetInHand,
  { weights, reserve, sunUp }: { weights: SearchWeights; reserve: number; sunUp: Uint8Array },
): SearchFigures {
  const behind = (of: StudyResult) => of.rooms.filter((r) => rooms.has(r.id));
  const heating = (of: StudyResult) => behind(of).reduce((sum, r) => sum + r.with.heatingKWh, 0);
  const chosen = behind(result).map((r) => r.with.chosen);
  const over = chosen.map((c) => Math.max(c.value - (1 - reserve) * (c.limit ?? Infinity), 0));
  const broken = over.filter((value) => value > 0).length;
  const given = {
    hours: chosen.reduce((sum, c) => sum + c.hoursOver, 0),
    usefulLost: heating(result) - heating(up),
    viewHoursLost: meanViewHoursLost(result, openings, sunUp),
    ...movesOf(result, openings),
  };
  return {
    ...given,
    kept: broken === 0,
    broken,
    beyond: chosen.reduce((sum, c, i) => sum + over[i] * (c.unit === '1' ? c.hoursJudged : 1), 0),
    summerGain: gainOfOpenings(result, openings, 'summer'),
    winterLost: gainOfOpenings(up, openings, 'winter') - gainOfOpenings(result, openings, 'winter'),
    price: priceOf(given, weights),
  };
}

/** Moves of the blind that moves most. */
function movesOf(result: StudyResult, openings: ReadonlySet<string>) {
  const blinds = result.openings.flatMap((o) => (openings.has(o.id) ? (o.blind ?? []) : []));
  // Members of a group share one array of positions.
  const years = new Map(blinds.map((b) => [b.state, b]));
  let most = { moves: 0, movesPerDay: 0 };
  for (const { state, actions } of years.values()) {
    const { moves, movesPerDay } = moveStatistics(state, actions, result.calendar);
    if (moves > most.moves) most = { moves, movesPerDay };
  }
  return most;
}

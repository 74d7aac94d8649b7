import { commonSchedule } from '../decide/index.ts';
import type { Project } from '../project/index.ts';
import { english } from '../schedule/index.ts';
import type { RuleAction, Schedule } from '../schedule/index.ts';
import { createEngine } from '../study/index.ts';
import type { Engine, StudyInput } from '../study/index.ts';
import { checkAllowed } from './allowed.ts';
import { descend } from './descent.ts';
import type { Space } from './descent.ts';
import { FAMILIES, spaceOf } from './families.ts';
import { findIdeal } from './hindsight.ts';
import type { IdealSeed } from './hindsight.ts';
import { RAISED, createJudge } from './judge.ts';
import type { Judged, ScheduleJudge } from './judge.ts';
import { plainRules } from './plainRules.ts';
import { wantedFrom } from './starts.ts';
import { takeTarget, withSchedule } from './target.ts';
import type {
  FamilyFinding,
  FamilyId,
  IdealFinding,
  SearchFindings,
  SearchOptions,
  SearchProgress,
  SearchTarget,
} from './types.ts';
import { compareScores, mostRunsOf, reserveOf, weightsOf } from './weights.ts';

/** Shares of the runs: a timer has the most figures to set, a room sensor the fewest. */
const RUN_SHARES: Record<FamilyId, number> = {
  timer: 5,
  irradiance: 2,
  tracking: 2,
  room: 1,
  roomSun: 3,
};
const LOWER: RuleAction = { kind: 'lower' };
/** Part of the runs kept for the reference with hindsight. */
const IDEAL_SHARE = 0.2;

/**
 * Searches the blind schedule of one facade or group, everything else as planned: of the schedules
 * of each family the one that keeps the criterion of the rooms behind it at the lowest price in
 * view, useful sun and moves; where none keeps it, the one least beyond it. Step by step, so that
 * it can be watched and left at any step. The same input gives the same findings.
 *
 * @param engine one whose kept stages may be used; a new one where absent
 * @throws InputError for a target that is not there, a weight, a bound or a value that cannot be
 */
export function* searchSchedule(
  input: StudyInput,
  target: SearchTarget,
  options: SearchOptions = {},
  engine: Engine = createEngine(),
): Generator<SearchProgress, SearchFindings> {
  const weights = weightsOf(options);
  const reserve = reserveOf(options);
  const most = mostRunsOf(options);
  const allowed = options.allowed ?? {};
  checkAllowed(allowed);
  const inHand = takeTarget(input, target);
  const { settings } = input.project;
  const judge = createJudge(engine, input, inHand, weights, reserve);
  const { up, hemisphere } = judge;
  const linesOf = (schedule: Schedule) => plainRules(schedule, inHand.name);

  let best: Judged = { schedule: RAISED, figures: up.figures };
  const progress = (stage: SearchProgress['stage']): SearchProgress => ({
    target,
    stage,
    runs: judge.runs,
    most,
    best: { lines: linesOf(best.schedule), figures: best.figures },
  });
  yield progress('references');
  const planned = judge.planned();
  const down = downInSeason(hemisphere);
  const seasonDown = judge.of(down);
  let choice: SearchFindings['choice'] = 'alwaysUp';
  if (compareScores(seasonDown, best.figures) < 0) {
    best = { schedule: down, figures: seasonDown };
    choice = 'seasonDown';
  }
  yield progress('references');

  // Raised blinds give up nothing: nothing that keeps the criterion too can be better.
  const enough = up.figures.kept && weights.hourOver === 0;
  const context = {
    inHand,
    hemisphere,
    up: up.result,
    wanted: wantedFrom(up.result, inHand, settings),
    // Kept by the engine, so no run.
    down: judge.again(down),
    sunUp: judge.sunUp,
    weights,
    allowed,
  };
  const wanted = FAMILIES.filter((id) => !enough && (options.families ?? FAMILIES).includes(id));
  const spaces = wanted.flatMap((family) => {
    const space = spaceOf(family, context);
    return space ? [{ family, space }] : [];
  });
  const runsForAll = most * (1 - IDEAL_SHARE);
  const families = yield* eachStep(
    searchFamilies(judge, spaces, { runs: runsForAll, saving: weights.hourOver === 0 }, linesOf),
    ({ family, tried }) => {
      if (compareScores(tried.figures, best.figures) < 0) {
        best = tried;
        choice = family;
      }
      return progress(family);
    },
  );

  const plannedBetter = compareScores(planned.figures, best.figures) < 0;
  let ideal: IdealFinding = { figures: best.figures, days: 0, better: false, runs: 0 };
  if (!enough) {
    const seed = plannedBetter ? { ...planned, then: LOWER } : seedOf(judge, best);
    const search = findIdeal(judge, inHand, settings, weights, seed, most - judge.runs);
    ideal = yield* eachStep(search, () => progress('ideal'));
  }
  return {
    target,
    name: inHand.name,
    openings: [...inHand.openings],
    rooms: [...inHand.rooms],
    stock: inHand.stock,
    ungrouped: inHand.ungrouped,
    criterion: up.result.rooms.find((r) => inHand.rooms.has(r.id))!.with.chosen.title.english,
    weights,
    reserve,
    hemisphere,
    planned: planned.figures,
    alwaysUp: up.figures,
    seasonDown,
    families,
    choice,
    plannedBetter,
    found: {
      schedule: best.schedule,
      lines: linesOf(best.schedule),
      figures: best.figures,
    },
    ideal,
    runs: judge.runs,
    warnings: up.result.warnings,
  };
}

/** Goes through a search step by step, telling each step in other words. */
function* eachStep<Step, Told, End>(
  search: Generator<Step, End>,
  tell: (step: Step) => Told,
): Generator<Told, End> {
  let step = search.next();
  for (; !step.done; step = search.next()) yield tell(step.value);
  return step.value;
}

/** The best of each family; every schedule run is given as it is known. */
function* searchFamilies(
  judge: ScheduleJudge,
  spaces: readonly { family: FamilyId; space: Space }[],
  bound: { runs: number; saving: boolean },
  linesOf: (schedule: Schedule) => string[],
): Generator<{ family: FamilyId; tried: Judged }, FamilyFinding[]> {
  const families: FamilyFinding[] = [];
  for (const [i, { family, space }] of spaces.entries()) {
    const shares = spaces.slice(i).reduce((sum, s) => sum + RUN_SHARES[s.family], 0);
    const left = bound.runs - judge.runs;
    const budget = Math.max(1, Math.floor((left * RUN_SHARES[family]) / shares));
    const before = judge.runs;
    const search = descend(space, judge.of, budget, bound.saving);
    const { best, full } = yield* eachStep(search, (tried) => ({ family, tried }));
    if (!best) continue;
    const { schedule, figures } = best;
    const lines = linesOf(schedule);
    families.push({ family, schedule, lines, figures, runs: judge.runs - before, full });
  }
  return families;
}

/** A schedule found as what hindsight begins with. */
function seedOf(judge: ScheduleJudge, { schedule, figures }: Judged): IdealSeed {
  const then = schedule.rules[0]?.then ?? LOWER;
  return { figures, result: judge.study(schedule), then };
}

/** The same in one go. */
export function runSearch(
  input: StudyInput,
  target: SearchTarget,
  options: SearchOptions = {},
  engine: Engine = createEngine(),
): SearchFindings {
  const search = searchSchedule(input, target, options, engine);
  let step = search.next();
  while (!step.done) step = search.next();
  return step.value;
}

/** The project with every schedule found in its place; what is planned stays where it is better. */
export function withFound(project: Project, findings: readonly SearchFindings[]): Project {
  return findings
    .filter((f) => !f.plannedBetter)
    .reduce((plan, f) => withSchedule(plan, f.target, f.found.schedule), project);
}

/** Down day and night through the warm half-year. */
function downInSeason(hemisphere: 'north' | 'south'): Schedule {
  const { dates } = commonSchedule(hemisphere).rules[0].when;
  return {
    id: 'season-down',
    name: english.stock.season,
    rules: [{ id: 'season', when: { dates }, then: { kind: 'lower' } }],
    minMinutesBetweenMoves: 0,
  };
}

import { commonSchedule } from '../decide/index.ts';
import type { Project } from '../project/index.ts';
import type { RuleAction, Schedule } from '../schedule/index.ts';
import { createEngine } from '../study/index.ts';
import type { Engine, StudyInput } from '../study/index.ts';
import { checkAllowed } from './allowed.ts';
import { descend } from './descent.ts';
import { FAMILIES, spaceOf } from './families.ts';
import { findIdeal } from './hindsight.ts';
import type { IdealSeed } from './hindsight.ts';
import { RAISED, createJudge } from './judge.ts';
import type { Judged } from './judge.ts';
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
  timer: 6,
  irradiance: 2,
  tracking: 2,
  room: 1,
  roomSun: 2,
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
  const families: FamilyFinding[] = [];
  for (const [i, { family, space }] of spaces.entries()) {
    const shares = spaces.slice(i).reduce((sum, s) => sum + RUN_SHARES[s.family], 0);
    const rest = most * (1 - IDEAL_SHARE) - judge.runs;
    const budget = Math.max(1, Math.floor((rest * RUN_SHARES[family]) / shares));
    const before = judge.runs;
    const search = descend(space, judge.of, budget, weights.hourOver === 0);
    let step = search.next();
    for (; !step.done; step = search.next()) {
      if (compareScores(step.value.figures, best.figures) < 0) {
        best = step.value;
        choice = family;
      }
      yield progress(family);
    }
    const { best: own, full } = step.value;
    if (!own) continue;
    const lines = linesOf(own.schedule);
    families.push({ family, ...own, lines, runs: judge.runs - before, full });
  }

  const plannedBetter = compareScores(planned.figures, best.figures) < 0;
  let ideal: IdealFinding = { figures: up.figures, days: 0, better: false, runs: 0 };
  if (spaces.length > 0) {
    const seed: IdealSeed = plannedBetter
      ? { ...planned, then: LOWER }
      : {
          figures: best.figures,
          result: judge.study(best.schedule),
          then: best.schedule.rules[0]?.then ?? LOWER,
        };
    const search = findIdeal(judge, inHand, settings, weights, seed, most - judge.runs);
    let step = search.next();
    for (; !step.done; step = search.next()) yield progress('ideal');
    ideal = step.value;
  }
  return {
    target,
    name: inHand.name,
    openings: [...inHand.openings],
    rooms: [...inHand.rooms],
    stock: inHand.stock,
    ungrouped: inHand.ungrouped,
    criterion: up.result.rooms.find((r) => inHand.rooms.has(r.id))!.with.chosen.title,
    weights,
    reserve,
    hemisphere,
    planned: planned.figures,
    alwaysUp: up.figures,
    seasonDown,
    families,
    choice,
    plannedBetter,
    found: { ...best, lines: linesOf(best.schedule) },
    ideal,
    runs: judge.runs,
    warnings: up.result.warnings,
  };
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
    name: 'Down in season',
    rules: [{ id: 'season', when: { dates }, then: { kind: 'lower' } }],
    minMinutesBetweenMoves: 0,
  };
}

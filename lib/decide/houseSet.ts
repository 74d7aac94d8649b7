import { InputError, problem, verbatim } from '../problem/index.ts';
import { blindPrices } from '../project/index.ts';
import type { Engine, StudyInput } from '../study/index.ts';
import { blockJudge, blocksOf } from './blocks.ts';
import type { Pick } from './exact.ts';
import { Judged, compareOutcomes } from './judged.ts';
import type { Creep, Outcome } from './judged.ts';
import { searchBlinds } from './smallest.ts';
import type { SearchResult } from './smallest.ts';
import { sayProblem as say } from '../words/index.ts';

/** A set of openings that get external blinds, and how the house fares with it. */
export interface BlindSet extends Outcome {
  openings: string[];
  cost: number;
}

/** What the search over sets of external blinds found for the whole house. */
export interface SetFindings {
  /** The cheapest set with which every room keeps its criterion; absent where none was found. */
  smallest?: BlindSet;
  /** No set that does can be cheaper. */
  leastCost: number;
  /** Whether the set and the front are proven to be the best; otherwise greedy. */
  exact: boolean;
  /** Best set by number of blinds: fewest rooms broken, then fewest hours. */
  front: BlindSet[];
  /** Most hours and rooms by which one more blind was seen to make things worse. */
  creep: Creep;
  /** Sets judged, out of how many there are in the parts of the house searched by themselves. */
  evaluations: number;
  possible: number;
  /** Openings considered. */
  candidates: string[];
  /** Rooms that are searched together, each part with the smallest set of its own. */
  parts: { rooms: string[]; candidates: string[]; smallest?: BlindSet }[];
}

/** What the search may be told. */
export interface SetOptions {
  hemisphere: 'north' | 'south';
  /** Openings that may get an external blind; absent: all. */
  candidates?: readonly string[];
  /** Price by opening id, above 0, instead of those in the project; 1 where absent. */
  prices?: Readonly<Record<string, number>>;
  /** Called after each set judged. */
  onJudged?: () => void;
}

/**
 * Searches which openings must get external blinds so that every room keeps its criterion, at the
 * least cost, and the best set of each size. Parts of the house that do not touch each other are
 * searched one by one and put together, which is exact as costs, rooms and hours only add up.
 *
 * @throws InputError for a price that is not above 0 or a candidate that is no opening
 */
export function searchSets(engine: Engine, input: StudyInput, options: SetOptions): SetFindings {
  const { project } = input;
  const wanted = checkedCandidates(
    project.openings.map((o) => o.id),
    options.candidates,
  );
  const prices = options.prices ?? blindPrices(project);
  checkPrices(prices);
  const parts = blocksOf(project).map((block) => {
    const candidates = block.openings.filter((id) => wanted.has(id));
    const judge = blockJudge(engine, input, block, candidates, options.hemisphere);
    const result = searchBlinds(
      new Judged(candidates.length, (choice) => {
        const outcome = judge(choice);
        options.onJudged?.();
        return outcome;
      }),
      candidates.map((id) => prices[id] ?? 1),
    );
    return { rooms: block.rooms, candidates, result };
  });
  const results = parts.map((part) => part.result);
  const sum = (pick: (r: SearchResult) => number) => results.reduce((s, r) => s + pick(r), 0);
  const most = (pick: (r: SearchResult) => number) => Math.max(0, ...results.map(pick));
  const found = parts.map(({ rooms, candidates, result }) => ({
    rooms,
    candidates,
    smallest: result.smallest && setOf(result.smallest, candidates),
  }));
  const smallest = found.every((p) => p.smallest)
    ? found.map((p) => p.smallest!).reduce(joined, NO_BLINDS)
    : undefined;
  return {
    smallest,
    leastCost: sum((r) => r.leastCost),
    exact: results.every((r) => r.exact),
    front: parts
      .map((p) => p.result.front.map((pick) => setOf(pick, p.candidates)))
      .reduce(joinedFronts, [NO_BLINDS]),
    creep: { broken: most((r) => r.creep.broken), hours: most((r) => r.creep.hours) },
    evaluations: sum((r) => r.evaluations),
    possible: parts.reduce((s, p) => s + 2 ** p.candidates.length, 0),
    candidates: project.openings.map((o) => o.id).filter((id) => wanted.has(id)),
    parts: found,
  };
}

const NO_BLINDS: BlindSet = { openings: [], cost: 0, broken: 0, hours: 0 };

function setOf({ choice, cost, outcome }: Pick, candidates: readonly string[]): BlindSet {
  return { openings: candidates.filter((_, i) => choice[i] === 1), cost, ...outcome };
}

function joined(a: BlindSet, b: BlindSet): BlindSet {
  return {
    openings: [...a.openings, ...b.openings],
    cost: a.cost + b.cost,
    broken: a.broken + b.broken,
    hours: a.hours + b.hours,
  };
}

/** The front of two parts together: for each number of blinds the best way to share them out. */
export function joinedFronts(a: readonly BlindSet[], b: readonly BlindSet[]): BlindSet[] {
  return Array.from({ length: a.length + b.length - 1 }, (_, size) => {
    let best: BlindSet | undefined;
    for (let i = Math.max(0, size - b.length + 1); i <= Math.min(size, a.length - 1); i++) {
      const set = joined(a[i], b[size - i]);
      if (!best || compareOutcomes(set, best) < 0) best = set;
    }
    return best!;
  });
}

function checkedCandidates(all: string[], candidates?: readonly string[]): Set<string> {
  const unknown = candidates?.find((id) => !all.includes(id));
  if (unknown === undefined) return new Set(candidates ?? all);
  const allowed = verbatim(all.join(', '));
  const texts = { message: say('decide.candidate'), allowed, fix: say('decide.candidateFix') };
  throw new InputError(problem('candidates', texts, unknown));
}

function checkPrices(prices: Readonly<Record<string, number>>): void {
  for (const [id, price] of Object.entries(prices)) {
    if (Number.isFinite(price) && price > 0) continue;
    const texts = {
      message: say('decide.price'),
      allowed: say('decide.priceAllowed'),
      fix: say('decide.priceFix'),
    };
    throw new InputError(problem(`prices.${id}`, texts, price));
  }
}

import { externalsOn, plannedExternal } from '../../lib/decide/index.ts';
import type { Cell, FacadeVerdict, Treatment } from '../../lib/decide/index.ts';
import type { Project } from '../../lib/project/index.ts';
import type { PageFacts } from './facts.ts';
import { blindOf, openingOf, wallOf } from './facts.ts';
import type { Teller } from './teller.ts';

/**
 * - `blind`: in the smallest set of external blinds;
 * - `plannedExternal`: an external blind is planned, but the limit is kept without it;
 * - `otherShading`: no external blind, but another shading is planned;
 * - `none`: nothing is needed.
 */
export type Need = 'blind' | 'plannedExternal' | 'otherShading' | 'none';

export interface OpeningAnswer {
  id: string;
  need: Need;
  /** Too-hot hours its planned or stock blind saves with all the others as planned. */
  saved: number;
}

/** What each opening needs, in the order of the project. */
export function openingAnswers(facts: PageFacts): OpeningAnswer[] {
  const { project, decision } = facts;
  const planned = plannedExternal(project, facts);
  const saved = new Map(decision.openings.map((o) => [o.id, o.hoursSavedLast]));
  const needed = new Set(neededOpenings(facts));
  return project.openings.map((opening) => {
    const { id } = opening;
    const need: Need = needed.has(id)
      ? 'blind'
      : planned.has(id)
        ? 'plannedExternal'
        : (opening.blind ?? opening.insectScreen)
          ? 'otherShading'
          : 'none';
    return { id, need, saved: saved.get(id) ?? 0 };
  });
}

/** Openings that must have an external blind; all of them where not even all are enough. */
export function neededOpenings({ decision }: PageFacts): string[] {
  const { parts, candidates, smallest } = decision.sets;
  if (smallest) return smallest.openings;
  return parts.length > 0 ? parts.flatMap((p) => p.smallest?.openings ?? p.candidates) : candidates;
}

/** The house with the answer's external blinds besides all that is planned. */
export function answerHouse(facts: PageFacts): Project {
  const { project, decision } = facts;
  const wanted = new Set([...plannedExternal(project, facts), ...neededOpenings(facts)]);
  return externalsOn(project, facts, wanted, decision.hemisphere);
}

/** The answer to the client's question. */
export interface Answer {
  kind: 'some' | 'none' | 'notEnough';
  /** The answer in one sentence. */
  headline: string;
  /** What goes without, what stays as planned, and how sure it is that fewer would not do. */
  lines: string[];
}

export function answerOf(facts: PageFacts, teller: Teller): Answer {
  const { t, words } = teller;
  const { sets } = facts.decision;
  const needed = neededOpenings(facts);
  const names = (ids: readonly string[]) => words.list(ids.map((id) => openingOf(facts, id).name));
  const rest = restOf(facts, needed, teller);
  const lines = [
    ...(rest ? [rest] : []),
    ...(sets.smallest && needed.length > 0
      ? [
          sets.exact
            ? t('answer.fewest', { hours: teller.hours(sets.smallest.hours) })
            : t('answer.notProven', { hours: teller.hours(sets.smallest.hours) }),
        ]
      : []),
    ...otherShading(facts, needed, teller),
    ...worthHaving(facts, needed, teller),
  ];
  if (!sets.smallest) {
    const all = sets.front.at(-1)!;
    const left = { hours: teller.hours(all.hours), count: all.broken };
    return {
      kind: 'notEnough',
      headline: t('answer.notEnough'),
      lines: [t('answer.stillHot', left), ...lines.slice(rest ? 1 : 0)],
    };
  }
  if (needed.length === 0) {
    return { kind: 'none', headline: t('answer.none'), lines: lines.slice(rest ? 1 : 0) };
  }
  return { kind: 'some', headline: t('answer.some', { openings: names(needed) }), lines };
}

/** Openings that go without: whole walls by their name, others by their own. */
function restOf(facts: PageFacts, needed: readonly string[], { t, words }: Teller): string {
  const { openings, walls } = facts.project;
  const parts = walls.flatMap((wall) => {
    const own = openings.filter((o) => o.wall === wall.id);
    const free = own.filter((o) => !needed.includes(o.id));
    if (free.length === 0) return [];
    return free.length === own.length && own.length > 1 ? [wall.name] : free.map((o) => o.name);
  });
  return parts.length > 0 ? t('answer.notNeeded', { openings: words.list(parts) }) : '';
}

/** The answer counts on all other shading that is planned: it is said, by opening. */
function otherShading(facts: PageFacts, needed: readonly string[], { t, words }: Teller): string[] {
  const { openings } = facts.project;
  const named = openings.flatMap((o) => {
    const blind = o.blind && blindOf(facts, o.blind.blind);
    if (!blind || blind.position === 'external' || needed.includes(o.id)) return [];
    return [
      t(`answer.${blind.position === 'between' ? 'between' : 'internal'}`, { opening: o.name }),
    ];
  });
  const screens = openings.filter((o) => o.insectScreen).length;
  const all = [...named, ...(screens > 0 ? [t('answer.screens', { count: screens })] : [])];
  return all.length > 0 ? [t('answer.asPlanned', { shading: words.list(all) })] : [];
}

function worthHaving(facts: PageFacts, needed: readonly string[], teller: Teller): string[] {
  const better = facts.decision.verdicts.filter(
    ({ kind, facade }) =>
      kind === 'better' &&
      facts.project.openings.every((o) => o.wall !== facade || !needed.includes(o.id)),
  );
  return better.map(({ facade, bare, external }) =>
    teller.t('answer.worth', {
      facade: wallOf(facts, facade).name,
      hours: teller.hours(bare.hours - external.hours),
    }),
  );
}

/** One facade of the table under the answer. */
export interface FacadeRow {
  name: string;
  facing: string;
  bare: string;
  external: string;
  verdict: string;
}

export function facadeRows(facts: PageFacts, teller: Teller): FacadeRow[] {
  return facts.decision.verdicts.map((verdict) => {
    const wall = wallOf(facts, verdict.facade);
    return {
      name: wall.name,
      facing: teller.facing(wall.azimuth),
      bare: cellText(verdict.bare, teller),
      external: cellText(verdict.external, teller),
      verdict: verdictText(verdict, facts, teller),
    };
  });
}

function cellText({ hours, kept }: Cell, { t, words }: Teller): string {
  return `${words.number(hours)}\u00a0${t(kept ? 'facade.kept' : 'facade.broken')}`;
}

function verdictText(verdict: FacadeVerdict, facts: PageFacts, teller: Teller): string {
  const { t } = teller;
  const isIn = neededOpenings(facts).some((id) => openingOf(facts, id).wall === verdict.facade);
  const { kind, enough, cheaper } = verdict;
  if (kind === 'cheaper') {
    const hours = cheaper.find((c) => c.treatment === enough)!.cell.hours;
    const measure = measureText(enough!, teller);
    const figures = { measure, hours: teller.number(hours) };
    return isIn ? t('facade.cheaperInSet', figures) : t('facade.cheaper', figures);
  }
  if (kind === 'none' || kind === 'better') {
    if (isIn) return t('facade.inSet');
    const saved = Math.max(0, verdict.bare.hours - verdict.external.hours);
    return t(`facade.${kind}`, { hours: teller.hours(saved) });
  }
  return t(`facade.${kind}`);
}

export function measureText(treatment: Treatment, { t }: Teller): string {
  return t(`measure.${treatment}`);
}

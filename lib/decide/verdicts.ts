import type { Project } from '../project/index.ts';
import { HOURS } from '../time/index.ts';
import type { SetFindings } from './houseSet.ts';
import { facadesOf, treatedCell, treatedProject } from './matrix.ts';
import type { Cell, FacadeInHand, PlanContext, Treatment } from './matrix.ts';
import type { MeasureId, MeasureOptions } from './measures.ts';
import { externalsOn, plannedExternal } from './plans.ts';
import { roomFigures } from './figures.ts';
import type { Runs } from './runs.ts';

/**
 * - `needs`: too hot with the facade bare, all right with external blinds, and nothing cheaper does;
 * - `cheaper`: too hot with the facade bare, and something cheaper does;
 * - `better`: all right with the facade bare, but external blinds save hours worth having;
 * - `none`: external blinds would save next to nothing;
 * - `notEnough`: external blinds save hours worth having, but too hot even with them everywhere.
 */
export type VerdictKind = 'needs' | 'cheaper' | 'better' | 'none' | 'notEnough';

/**
 * How the other facades are while one is judged: as planned where the rooms behind it keep their
 * criterion so, otherwise with the smallest set of external blinds, and with external blinds
 * everywhere where no set is enough.
 */
export type Reference = 'planned' | 'smallestSet' | 'allExternal';

/** Verdict on one facade with the figures behind it. */
export interface FacadeVerdict {
  facade: string;
  kind: VerdictKind;
  others: Reference;
  rooms: string[];
  /** The facade bare and with external blinds, the others as in `others`. */
  bare: Cell;
  external: Cell;
  /** Which external blinds: those planned, stock ones, or some of both. */
  externalFrom: 'planned' | 'stock' | 'both';
  /** Cheaper treatments with what they come to, the cheapest to put in first. */
  cheaper: { treatment: Treatment; cell: Cell }[];
  /** The first of them that keeps the criterion. */
  enough?: Treatment;
  /** Openings of the facade in the smallest set. */
  inSmallestSet: string[];
  /** Openings of the facade that are an escape route. */
  escapeRoutes: string[];
}

/** Cheaper than external blinds, the cheapest to put in first (common practice). */
const CHEAPER: readonly MeasureId[] = ['nightAiring', 'screen', 'internal', 'overhang', 'lowerG'];

/**
 * External blinds are worth having where they save this many hours a year and this share of the
 * hours over, or a hundredth of the year (our own choice).
 */
export const WORTH_HOURS = 20;
export const WORTH_SHARE = 0.1;
const WORTH_ALWAYS = HOURS / 100;

export function facadeVerdicts(
  runs: Runs,
  sets: SetFindings,
  options: MeasureOptions,
): FacadeVerdict[] {
  return facadesOf(runs.input.project).map((facade) => verdict(runs, sets, options, facade));
}

function verdict(
  runs: Runs,
  sets: SetFindings,
  options: MeasureOptions,
  facade: FacadeInHand,
): FacadeVerdict {
  const { project, library } = runs.input;
  const others = reference(runs, sets, facade);
  const base = basePlan(runs, sets, others);
  const cell = (treatment: Treatment) => treatedCell(runs, base, facade, treatment, options);
  const bare = cell('bare')!;
  const member = membersOf(sets, facade);
  const external = cell(externalTreatment(others, member))!;
  const planned = plannedExternal(project, library);
  const own = [...facade.openings];
  const treatments: Treatment[] = hasOther(project, own, planned)
    ? ['planned', ...CHEAPER]
    : [...CHEAPER];
  const cheaper = treatments.flatMap((treatment) => {
    const found = cell(treatment);
    return found ? [{ treatment, cell: found }] : [];
  });
  const enough = bare.kept ? undefined : cheaper.find((c) => c.cell.kept)?.treatment;
  return {
    facade: facade.id,
    kind: verdictKind(bare, external, enough),
    others,
    rooms: [...facade.rooms],
    bare,
    external,
    externalFrom: fromWhere(own, planned),
    cheaper,
    ...(enough === undefined ? {} : { enough }),
    inSmallestSet: member,
    escapeRoutes: project.openings
      .filter((o) => facade.openings.has(o.id) && o.escapeRoute)
      .map((o) => o.id),
  };
}

/** Openings of a facade in the smallest set: it says itself which of them get blinds. */
function membersOf(sets: SetFindings, facade: FacadeInHand): string[] {
  return sets.parts
    .flatMap((part) => part.smallest?.openings ?? [])
    .filter((id) => facade.openings.has(id));
}

/** What stands for external blinds on a facade: those of the base where that is the smallest set. */
function externalTreatment(others: Reference, member: readonly string[]): Treatment {
  return others === 'smallestSet' && member.length > 0 ? 'planned' : 'external';
}

/** The houses a verdict compares. */
export interface VerdictPlans {
  bare: Project;
  external: Project;
  cheaper: { treatment: Treatment; project: Project }[];
}

/** The houses behind a verdict, to run them again in another year or with other tolerances. */
export function verdictPlans(
  context: PlanContext,
  sets: SetFindings,
  verdict: FacadeVerdict,
  options: MeasureOptions,
): VerdictPlans {
  const facade = facadesOf(context.input.project).find((f) => f.id === verdict.facade)!;
  const base = basePlan(context, sets, verdict.others);
  const plan = (treatment: Treatment) => treatedProject(context, base, facade, treatment, options)!;
  return {
    bare: plan('bare'),
    external: plan(externalTreatment(verdict.others, membersOf(sets, facade))),
    cheaper: verdict.cheaper.map(({ treatment }) => ({ treatment, project: plan(treatment) })),
  };
}

type Judged = Pick<Cell, 'hours' | 'kept'>;

/**
 * The verdict that a facade's figures come to.
 * @param enough the cheaper treatment that keeps the criterion; absent: none does
 */
export function verdictKind(
  bare: Judged,
  external: Judged,
  enough: Treatment | undefined,
): VerdictKind {
  const saved = bare.hours - external.hours;
  const worth =
    saved >= WORTH_ALWAYS || (saved >= WORTH_HOURS && saved >= WORTH_SHARE * bare.hours);
  if (bare.kept) return worth ? 'better' : 'none';
  if (enough !== undefined) return 'cheaper';
  if (external.kept) return 'needs';
  return worth ? 'notEnough' : 'none';
}

/** What a facade is judged against. */
function reference(runs: Runs, sets: SetFindings, facade: FacadeInHand): Reference {
  if (roomFigures(runs.planned, facade.rooms).kept) return 'planned';
  const behind = sets.parts.filter((part) => part.rooms.some((room) => facade.rooms.has(room)));
  return behind.every((part) => part.smallest) ? 'smallestSet' : 'allExternal';
}

/** The house a facade is judged in. */
function basePlan({ input, hemisphere }: PlanContext, sets: SetFindings, others: Reference) {
  if (others === 'planned') return input.project;
  const openings = sets.parts.flatMap((part) => part.smallest?.openings ?? part.candidates);
  return externalsOn(input.project, input.library, new Set(openings), hemisphere);
}

/** Whether a facade is planned with some shading, none of it external blinds. */
function hasOther(project: Project, own: readonly string[], planned: ReadonlySet<string>): boolean {
  const openings = project.openings.filter((o) => own.includes(o.id));
  return (
    openings.some((o) => o.blind ?? o.insectScreen) && openings.every((o) => !planned.has(o.id))
  );
}

function fromWhere(own: readonly string[], planned: ReadonlySet<string>) {
  const count = own.filter((id) => planned.has(id)).length;
  if (count === own.length) return 'planned' as const;
  return count === 0 ? ('stock' as const) : ('both' as const);
}

import type { Project } from '../project/index.ts';
import type { StudyInput } from '../study/index.ts';
import { MEASURES, applyMeasure, fittingOpenings } from './measures.ts';
import type { MeasureId, MeasureOptions } from './measures.ts';
import { gainOfOpenings, meanViewHoursLost, roomFigures } from './figures.ts';
import type { RoomFigures } from './figures.ts';
import { withExternals } from './plans.ts';
import type { Runs } from './runs.ts';

/** A measure of the matrix, or what is planned on the facade. */
export type Treatment = MeasureId | 'planned' | 'external';

/** How all other facades are while one is treated. */
export type Others = 'bare' | 'planned';

/** One facade with one treatment. */
export interface Cell extends RoomFigures {
  /** Sun that comes in through the facade from June to August (the south: December to February), kWh. */
  summerGain: number;
  /** Sun in winter that bare glass would let in and this does not, kWh. */
  winterLost: number;
  /** Occupied daylight hours with the blind down, mean over the facade's glass. */
  viewHoursLost: number;
}

/** One facade of the matrix with the rooms behind it. */
export interface FacadeMatrix {
  facade: string;
  openings: string[];
  rooms: string[];
  /** By treatment; absent where a measure fits no opening of the facade. */
  cells: Record<Others, Partial<Record<Treatment, Cell>>>;
}

export const TREATMENTS: readonly Treatment[] = ['planned', ...MEASURES];

/** A facade seen apart from the rest. */
export interface FacadeInHand {
  id: string;
  openings: ReadonlySet<string>;
  rooms: ReadonlySet<string>;
}

/** Facades with openings, in the order of the walls. */
export function facadesOf(project: Project): FacadeInHand[] {
  return project.walls.flatMap(({ id }) => {
    const own = project.openings.filter((o) => o.wall === id);
    if (own.length === 0) return [];
    return {
      id,
      openings: new Set(own.map((o) => o.id)),
      rooms: new Set(own.map((o) => o.room)),
    };
  });
}

/** Every measure on every facade alone, with all other facades bare and with them as planned. */
export function facadeMatrix(runs: Runs, options: MeasureOptions): FacadeMatrix[] {
  const { project } = runs.input;
  const facades = facadesOf(project);
  return facades.map((facade) => {
    const cells = (base: Project) =>
      Object.fromEntries(
        TREATMENTS.flatMap((treatment) => {
          const cell = treatedCell(runs, base, facade, treatment, options);
          return cell ? [[treatment, cell]] : [];
        }),
      );
    const othersBare = facades
      .filter((f) => f.id !== facade.id)
      .reduce(
        (p, { id }) => applyMeasure(p, runs.input.library, { facade: id }, 'bare', options),
        project,
      );
    return {
      facade: facade.id,
      openings: [...facade.openings],
      rooms: [...facade.rooms],
      cells: { bare: cells(othersBare), planned: cells(project) },
    };
  });
}

/** What a treated facade is worked out from. */
export type PlanContext = Pick<Runs, 'hemisphere'> & {
  input: Pick<StudyInput, 'project' | 'library'>;
};

/**
 * The house with one facade treated and the rest as in `base`; absent where the treatment fits no
 * opening of it. `planned` leaves the facade as it is in `base`; `external` adds stock external
 * blinds where it has no external ones.
 */
export function treatedProject(
  context: PlanContext,
  base: Project,
  facade: FacadeInHand,
  treatment: Treatment,
  options: MeasureOptions,
): Project | undefined {
  const { library } = context.input;
  const target = { facade: facade.id };
  if (treatment === 'planned') return base;
  if (treatment === 'external') {
    return withExternals(base, library, facade.openings, context.hemisphere);
  }
  const fitting = fittingOpenings(base, library, target, treatment, options);
  return fitting.length > 0 ? applyMeasure(base, library, target, treatment, options) : undefined;
}

/** One facade treated, the rest as in `base`; absent where the treatment fits no opening of it. */
export function treatedCell(
  runs: Runs,
  base: Project,
  facade: FacadeInHand,
  treatment: Treatment,
  options: MeasureOptions,
): Cell | undefined {
  const treated = treatedProject(runs, base, facade, treatment, options);
  if (!treated) return undefined;
  const result = runs.of(treated);
  const bare = runs.of(treatedProject(runs, base, facade, 'bare', options)!);
  const winter = (of: typeof result) => gainOfOpenings(of, facade.openings, 'winter');
  return {
    ...roomFigures(result, facade.rooms),
    summerGain: gainOfOpenings(result, facade.openings, 'summer'),
    winterLost: winter(bare) - winter(result),
    viewHoursLost: meanViewHoursLost(result, facade.openings, runs.sunUp),
  };
}

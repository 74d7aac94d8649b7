import { hemisphereOf, verdictPlans } from '../decide/index.ts';
import type {
  FacadeVerdict,
  MeasureOptions,
  Reference,
  SetFindings,
  Treatment,
  VerdictKind,
} from '../decide/index.ts';
import type { Project } from '../project/index.ts';
import type { Library } from '../study/index.ts';
import type { SureWeather } from './weather.ts';

/** A house and where its years come from; plain data. */
export interface SureInput {
  /** A project that has been checked (lib/project). */
  project: Project;
  library: Library;
  weather: SureWeather;
}

/** What was decided, as `decide` gives it. */
export interface Decided {
  verdicts: readonly FacadeVerdict[];
  sets: SetFindings;
  overhangDepth: number;
}

/** One facade whose verdict is to be made again. */
export interface FacadeQuestion {
  facade: string;
  rooms: string[];
  openings: string[];
  /** The verdict in the planned year. */
  kind: VerdictKind;
  enough?: Treatment;
  others: Reference;
  bare: Project;
  external: Project;
  /** Cheaper treatments tried again, in this order: at most two. */
  cheaper: { treatment: Treatment; project: Project }[];
}

/** All that a case needs besides its own circumstances; plain data, for workers to be sent. */
export interface SureQuestion extends SureInput {
  facades: FacadeQuestion[];
}

/**
 * What to try again in every case. The houses compared stay those of the decision: the smallest set
 * is not searched again, and of the cheaper measures only the one that was enough and the one that
 * came nearest are tried.
 */
export function questionOf(input: SureInput, decided: Decided): SureQuestion {
  const { project, library } = input;
  const hemisphere = hemisphereOf(
    input.weather.kind === 'file' ? input.weather.year.latitude : input.weather.place.latitude,
  );
  const options: MeasureOptions = { hemisphere, overhangDepth: decided.overhangDepth };
  const context = { input: { project, library }, hemisphere };
  const facades = decided.verdicts.map((verdict): FacadeQuestion => {
    const { facade, kind, enough, others, rooms } = verdict;
    const plans = verdictPlans(context, decided.sets, verdict, options);
    const again = triedAgain(verdict);
    return {
      facade,
      rooms,
      openings: project.openings.filter((o) => o.wall === facade).map((o) => o.id),
      kind,
      enough,
      others,
      bare: plans.bare,
      external: plans.external,
      cheaper: again.map((t) => plans.cheaper.find(({ treatment }) => treatment === t)!),
    };
  });
  return { ...input, facades };
}

/** The cheaper treatment that was enough, and that with the fewest hours, the first of equals. */
function triedAgain({ cheaper, enough }: FacadeVerdict): Treatment[] {
  const nearest = cheaper.reduce<(typeof cheaper)[number] | undefined>(
    (best, c) => (best && best.cell.hours <= c.cell.hours ? best : c),
    undefined,
  );
  return [...new Set([enough, nearest?.treatment])].filter((t) => t !== undefined);
}

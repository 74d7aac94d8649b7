import {
  applyMeasure,
  externalsOn,
  fittingOpenings,
  hemisphereOf,
  withStockBlinds,
  withoutBlinds,
  STOCK,
} from '../decide/index.ts';
import type { MeasureOptions, SetFindings } from '../decide/index.ts';
import { projectOf } from '../project/index.ts';
import type { Project } from '../project/index.ts';
import { createEngine } from '../study/index.ts';
import type { Engine, Library, StudyInput } from '../study/index.ts';
import { schemeFigures } from './schemeFigures.ts';
import type { SchemeFigures } from './schemeFigures.ts';

/** One complete choice of shading for a house; plain data. */
export interface Scheme {
  id: string;
  name: string;
  /** The house with this shading. */
  project: Project;
}

/** What the stock list may be told. */
export interface StockOptions extends MeasureOptions {
  /** Findings of the search over external blinds; the smallest set is left out where absent. */
  sets?: SetFindings;
}

/** The same house as planned, without blinds, and with the usual ones everywhere. Screens stay. */
export function stockSchemes(
  project: Project,
  library: Library,
  options: StockOptions = {},
): Scheme[] {
  const hemisphere = options.hemisphere ?? hemisphereOf(project.site.latitude);
  const all = new Set(project.openings.map((o) => o.id));
  const bare = withoutBlinds(project, all);
  const smallest = options.sets?.smallest;
  const scheme = (id: string, name: string, of: Project): Scheme => ({ id, name, project: of });
  return [
    scheme('planned', 'As planned', project),
    scheme('none', 'No blinds', bare),
    scheme(
      'internal',
      'Internal blinds everywhere',
      withStockBlinds(bare, new Map([...all].map((id) => [id, STOCK.internal])), hemisphere),
    ),
    scheme(
      'external',
      'External blinds everywhere',
      externalsOn(project, library, all, hemisphere),
    ),
    ...(smallest
      ? [
          scheme(
            'smallest',
            'Smallest set of external blinds',
            externalsOn(project, library, new Set(smallest.openings), hemisphere),
          ),
        ]
      : []),
    scheme('overhang', 'Overhangs, no blinds', withOverhangs(bare, library, options)),
  ];
}

/** The schemes that a project keeps. */
export function keptSchemes({ schemes = [] }: Project): Scheme[] {
  return schemes.map(({ id, house }) => ({ id, name: house.name, project: projectOf(house) }));
}

/** Overhangs wherever one fits; all else as it is. */
function withOverhangs(bare: Project, library: Library, options: MeasureOptions): Project {
  const openings = bare.openings.map((opening) => {
    const target = { opening: opening.id };
    if (fittingOpenings(bare, library, target, 'overhang', options).length === 0) return opening;
    const put = applyMeasure(bare, library, target, 'overhang', options);
    return { ...opening, overhang: put.openings.find((o) => o.id === opening.id)!.overhang };
  });
  return { ...bare, openings };
}

/**
 * Runs every scheme through the same year and tells its figures on the same axes.
 * @param input the house and its year; schemes stand on its site and are judged by its criterion
 */
export function compareSchemes(
  input: StudyInput,
  schemes: readonly Scheme[],
  engine: Engine = createEngine(),
): SchemeFigures[] {
  const { site, climate, year, settings } = input.project;
  return schemes.map((scheme) => {
    // A scheme may have been kept before the house was moved or its criterion changed.
    const own = { ...input, project: { ...scheme.project, site, climate, year, settings } };
    return schemeFigures(scheme, own, engine.run(own));
  });
}

import type { Glazing } from '../glazing/index.ts';
import { InputError, problem, verbatim } from '../problem/index.ts';
import { freeId } from '../project/index.ts';
import type { Project, ProjectOpening } from '../project/index.ts';
import { nightAiring, sashArea } from '../room/index.ts';
import { english, presetSchedules } from '../schedule/index.ts';
import type { Schedule } from '../schedule/index.ts';
import type { Library } from '../study/index.ts';
import { sayProblem as say } from '../words/index.ts';

/** What can be done about the sun at an opening. Each stands alone on it: no other blind or screen. */
export type MeasureId =
  | 'bare'
  | 'screen'
  | 'internal'
  | 'between'
  | 'externalSlats'
  | 'externalFabric'
  | 'overhang'
  | 'lowerG'
  | 'nightAiring';

export const MEASURES: readonly MeasureId[] = [
  'bare',
  'screen',
  'internal',
  'between',
  'externalSlats',
  'externalFabric',
  'overhang',
  'lowerG',
  'nightAiring',
];

/** One opening, or all openings of one wall. */
export type MeasureTarget = { opening: string } | { facade: string };

export interface MeasureOptions {
  /** Whose warm half-year the common schedule keeps; that of the site where absent. */
  hemisphere?: 'north' | 'south';
  /** Depth of the overhang from the wall's outer face, m; OVERHANG_DEPTH where absent. */
  overhangDepth?: number;
}

/** Depth of an overhang where none is asked for, m: common practice. */
export const OVERHANG_DEPTH = 0.8;

/** Ids of the library that stand for each kind of blind. */
export const STOCK = {
  screen: 'insect-screen-fine',
  internal: 'internal-roller-white',
  between: 'between-slats-25-vented',
  externalSlats: 'external-slats-80-silver',
  externalFabric: 'external-fabric-light',
} as const;

/** Glazings to change to, the mildest first; the first of few enough panes with a lower g is taken. */
const LOWER_G = [
  'double-solar-control',
  'triple-solar-control',
  'triple-strong-solar-control',
] as const;
/** A g lower by less than this is no measure. */
const LEAST_G_STEP = 0.05;

/** Days an insect screen hangs (common practice). */
const SCREEN_SEASON = {
  north: { from: '05-01', to: '10-01' },
  south: { from: '11-01', to: '04-01' },
} as const;

const WARM_HALF_YEAR = {
  north: { from: '04-01', to: '09-30' },
  south: { from: '10-01', to: '03-31' },
} as const;

/** A plane leaning less than this from the horizontal takes a fabric and no overhang, degrees. */
const STEEP = 60;

/**
 * The schedule of every blind that a measure adds: down while the sun gives 150 W/m2 or more on its
 * facade, up again below 100 W/m2, half an hour between moves, in the warm half-year of the
 * hemisphere (common practice).
 */
export function commonSchedule(hemisphere: 'north' | 'south'): Schedule {
  const preset = presetSchedules(hemisphere).find((p) => p.schedule.id === 'sun-on-glass')!;
  const [rule] = preset.schedule.rules;
  const when = { ...rule.when, dates: { ...WARM_HALF_YEAR[hemisphere] } };
  return {
    ...preset.schedule,
    id: 'sun-in-warm-half-year',
    name: english.stock.sun,
    rules: [{ ...rule, when }],
  };
}

/** Ids of the openings a target means. @throws InputError where there is no such opening or wall */
export function openingsAt(project: Project, target: MeasureTarget): string[] {
  const wanted = (o: ProjectOpening) =>
    'opening' in target ? o.id === target.opening : o.wall === target.facade;
  const found = project.openings.filter(wanted).map((o) => o.id);
  if (found.length > 0) return found;
  const [path, id, known] =
    'opening' in target
      ? ['target.opening', target.opening, project.openings.map((o) => o.id)]
      : ['target.facade', target.facade, [...new Set(project.openings.map((o) => o.wall))]];
  const allowed = verbatim(known.join(', '));
  const texts = { message: say('decide.noTarget'), allowed, fix: say('decide.noTargetFix') };
  throw new InputError(problem(path, texts, id));
}

/**
 * The project with the target's blinds and screens taken away and one measure put there instead
 * (`bare`: none). Openings the measure does not fit (`fittingOpenings`) stay bare; everything else
 * is left as it is, but that a group whose leading opening has left it takes `any` for its lead.
 */
export function applyMeasure(
  project: Project,
  library: Library,
  target: MeasureTarget,
  measure: MeasureId,
  options: MeasureOptions = {},
): Project {
  const ids = new Set(openingsAt(project, target));
  const fitting = fittingOpenings(project, library, target, measure, options);
  const bare = withOpenings(project, ids, ({ blind: _b, insectScreen: _s, ...rest }) => rest);
  return put(bare, library, new Set(fitting), measure, options);
}

/** Openings of a target on which a measure can be put and changes something. */
export function fittingOpenings(
  project: Project,
  library: Library,
  target: MeasureTarget,
  measure: MeasureId,
  options: MeasureOptions = {},
): string[] {
  const ids = openingsAt(project, target);
  return ids.filter((id) => {
    const opening = project.openings.find((o) => o.id === id)!;
    const steep = isSteep(project, opening);
    if (measure === 'screen') return (opening.airing?.kind ?? 'none') !== 'none';
    if (measure === 'externalSlats') return steep;
    if (measure === 'overhang') {
      const depth = options.overhangDepth ?? OVERHANG_DEPTH;
      return steep && (opening.overhang?.projection ?? 0) < depth;
    }
    if (measure === 'lowerG') return lowerGlazing(project, library, opening) !== undefined;
    if (measure === 'nightAiring') return opensTilted(opening);
    return true;
  });
}

function put(
  project: Project,
  library: Library,
  ids: ReadonlySet<string>,
  measure: MeasureId,
  options: MeasureOptions,
): Project {
  const hemisphere = options.hemisphere ?? hemisphereOf(project.site.latitude);
  switch (measure) {
    case 'bare':
      return project;
    case 'screen': {
      const screen = { blind: STOCK.screen, share: 1 as const, ...SCREEN_SEASON[hemisphere] };
      return withOpenings(project, ids, (o) => ({ ...o, insectScreen: screen }));
    }
    case 'internal':
    case 'between':
    case 'externalSlats':
    case 'externalFabric':
      return withStockBlinds(
        project,
        new Map([...ids].map((id) => [id, STOCK[measure]])),
        hemisphere,
      );
    case 'overhang': {
      const projection = options.overhangDepth ?? OVERHANG_DEPTH;
      const fresh = { aboveHead: 0.1, left: 0.5, right: 0.5 };
      return withOpenings(project, ids, (o) => ({
        ...o,
        overhang: { ...(o.overhang ?? fresh), projection },
      }));
    }
    case 'lowerG':
      return withOpenings(project, ids, (o) => ({
        ...o,
        glazing: lowerGlazing(project, library, o)!.id,
      }));
    case 'nightAiring':
      return withNightAiring(project, ids);
  }
}

/** Stock blinds by opening id, each moved by itself on the common schedule. */
export function withStockBlinds(
  project: Project,
  blinds: ReadonlyMap<string, string>,
  hemisphere: 'north' | 'south',
): Project {
  if (blinds.size === 0) return project;
  const common = commonSchedule(hemisphere);
  const same = project.schedules.find(
    (s) => JSON.stringify({ ...s, id: common.id }) === JSON.stringify(common),
  );
  const id =
    same?.id ??
    freeId(
      common.id,
      project.schedules.map((s) => s.id),
    );
  const schedules = same ? project.schedules : [...project.schedules, { ...common, id }];
  return withOpenings({ ...project, schedules }, blinds, (o) => ({
    ...o,
    blind: { blind: blinds.get(o.id)!, schedule: id },
  }));
}

/** Stock external blind for an opening: slats on walls, a fabric on roofs. */
export function stockExternal(project: Project, opening: ProjectOpening): string {
  return isSteep(project, opening) ? STOCK.externalSlats : STOCK.externalFabric;
}

/** Changes some openings; groups whose lead has left them take `any`. */
export function withOpenings(
  project: Project,
  ids: { has(id: string): boolean },
  change: (opening: ProjectOpening) => ProjectOpening,
): Project {
  const openings = project.openings.map((o) => (ids.has(o.id) ? change(o) : o));
  const leads = new Set(openings.map((o) => `${o.blind?.group} ${o.id}`));
  const groups = project.groups.map((group) =>
    group.lead === 'any' || leads.has(`${group.id} ${group.lead}`)
      ? group
      : { ...group, lead: 'any' },
  );
  return { ...project, openings, groups };
}

/** Night airing through sashes that tilt, added after the rules each room has. */
function withNightAiring(project: Project, ids: ReadonlySet<string>): Project {
  const rooms = project.rooms.map((room) => {
    const openings = project.openings.filter((o) => o.room === room.id && ids.has(o.id));
    if (openings.length === 0) return room;
    const rule = nightAiring();
    const id = freeId(
      rule.id,
      room.airing.map((r) => r.id),
    );
    return {
      ...room,
      airing: [...room.airing, { ...rule, id, openings: openings.map((o) => o.id) }],
    };
  });
  return { ...project, rooms };
}

function opensTilted({ airing }: ProjectOpening): boolean {
  return airing !== undefined && sashArea(airing, 'tilt') > 0;
}

function isSteep(project: Project, opening: ProjectOpening): boolean {
  const tilt = project.walls.find((w) => w.id === opening.wall)!.tilt;
  return tilt >= STEEP && tilt <= 180 - STEEP;
}

/** The mildest stock glazing with a lower g and no fewer panes (three at most); absent: none has. */
function lowerGlazing(
  project: Project,
  library: Library,
  opening: ProjectOpening,
): Glazing | undefined {
  const all = new Map([...library.glazings, ...project.glazings].map((g) => [g.id, g]));
  const now = all.get(opening.glazing);
  if (!now) return undefined;
  return LOWER_G.map((id) => all.get(id)).find(
    (g) => g && g.panes >= Math.min(now.panes, 3) && g.g <= now.g - LEAST_G_STEP,
  );
}

export function hemisphereOf(latitude: number): 'north' | 'south' {
  return latitude < 0 ? 'south' : 'north';
}

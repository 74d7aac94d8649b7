import { validateBlind, type Blind } from '../blind/index.ts';
import { normalsProblems } from '../climate/index.ts';
import { validateGlazing } from '../glazing/index.ts';
import { validateOpening } from '../opening/index.ts';
import type { Problem } from '../problem/index.ts';
import { geometryOf } from './geometry.ts';
import type { ProjectLibrary } from './library.ts';
import type { Part, SoundParts } from './parts.ts';
import { say, told } from './say.ts';
import type { ProjectOpening, ProjectWall } from './schema.ts';
import { keysOf, pathText, valueAt } from './walk.ts';

/** Least open share of a mesh that still lets air through. */
const LEAST_MESH = 0.05;

/** What does not fit together among parts that are each of the right form. */
export function fitProblems(root: unknown, parts: SoundParts, library: ProjectLibrary): Problem[] {
  const blinds = new Map<string, Blind>(
    [...library.blinds, ...parts.blinds.map((p) => p.item)].map((b) => [b.id, b]),
  );
  const walls = new Map(parts.walls.map((p) => [p.item.id, p.item]));
  return [
    ...parts.openings.flatMap(({ at, item }) => {
      const path = (field: string) => `${pathText(root, ['openings', at])}.${field}`;
      return [
        ...validateOpening(geometryOf(item)).map((p) => placed(p, (f) => path(inFile(f)))),
        ...wallFit(item, walls.get(item.wall), path),
        ...blindFit(item, blinds, path),
        ...sashFit(item, path),
      ];
    }),
    ...wallAreas(root, parts),
    ...validated(root, 'blinds', parts.blinds, validateBlind),
    ...parts.glazings.flatMap(({ at, item }) =>
      validateGlazing(item, pathText(root, ['glazings', at])),
    ),
    ...normalsFit(root, parts),
  ];
}

type PathOf = (field: string) => string;

function validated<T>(
  root: unknown,
  list: string,
  parts: readonly Part<T>[],
  validate: (item: T) => readonly Problem[],
): Problem[] {
  return parts.flatMap(({ at, item }) =>
    validate(item).map((p) => placed(p, (field) => pathText(root, [list, at, ...keysOf(field)]))),
  );
}

function placed(problem: Problem, path: PathOf): Problem {
  return { ...problem, path: path(problem.path) };
}

/** The geometry keeps the seen widths as `frame`, the file as `frame.widths`. */
function inFile(field: string): string {
  return field.replace(/^frame\./, 'frame.widths.');
}

function wallFit(opening: ProjectOpening, wall: ProjectWall | undefined, path: PathOf): Problem[] {
  if (!wall || opening.setBack <= wall.thickness) return [];
  return [
    told(
      path('setBack'),
      {
        message: say('setBack.behind', { wall: wall.id }),
        allowed: say('setBack.allowed', { thickness: wall.thickness }),
        fix: say('setBack.fix'),
      },
      opening.setBack,
    ),
  ];
}

function wallAreas(root: unknown, parts: SoundParts): Problem[] {
  return parts.walls.flatMap(({ at, item: wall }) => {
    const openings = parts.openings.filter((o) => o.item.wall === wall.id);
    const sum = openings.reduce((s, { item: o }) => s + o.width * o.height * o.count, 0);
    if (wall.area === undefined || sum <= wall.area) return [];
    return [
      told(
        `${pathText(root, ['walls', at])}.area`,
        {
          message: say('wallArea.small'),
          allowed: say('wallArea.allowed', { sum: Number(sum.toFixed(3)) }),
          fix: say('wallArea.fix'),
        },
        wall.area,
      ),
    ];
  });
}

function blindFit(
  opening: ProjectOpening,
  blinds: ReadonlyMap<string, Blind>,
  path: PathOf,
): Problem[] {
  const problems: Problem[] = [];
  const use = opening.blind;
  if (use?.schedule !== undefined && use.group !== undefined) {
    const texts = {
      message: say('bothMoved.message'),
      allowed: say('bothMoved.allowed'),
      fix: say('bothMoved.fix'),
    };
    problems.push(told(path('blind.schedule'), texts, use.schedule));
  }
  const blind = use && blinds.get(use.blind);
  const angle = use?.standingAngle;
  if (blind?.kind === 'slats' && angle !== undefined) {
    if (angle < blind.angleMin || angle > blind.angleMax) {
      const texts = {
        message: say('angle.outOfReach', { blind: blind.id }),
        allowed: say('angle.allowed', { min: blind.angleMin, max: blind.angleMax }),
        fix: say('angle.fix'),
      };
      problems.push(told(path('blind.standingAngle'), texts, angle));
    }
  }
  const screen = opening.insectScreen && blinds.get(opening.insectScreen.blind);
  if (screen && !(screen.kind === 'fabric' && screen.openness >= LEAST_MESH)) {
    const texts = {
      message: say(screen.kind === 'fabric' ? 'mesh.dense' : 'mesh.noFabric'),
      allowed: say('mesh.allowed', { least: LEAST_MESH }),
      fix: say('mesh.fix'),
    };
    problems.push(told(path('insectScreen.blind'), texts, screen.id));
  }
  return problems;
}

function sashFit(opening: ProjectOpening, path: PathOf): Problem[] {
  const sash = opening.airing;
  if (!sash || sash.kind === 'none') return [];
  const problems: Problem[] = [];
  for (const side of ['width', 'height'] as const) {
    if (sash[side] <= opening[side]) continue;
    const texts = {
      message: say('sash.more'),
      allowed: say(`sash.${side}.allowed`, { limit: opening[side] }),
      fix: say(`sash.${side}.fix`),
    };
    problems.push(told(path(`airing.${side}`), texts, sash[side]));
  }
  if (sash.kind === 'tilt' && sash.tiltAngle === 0) {
    const texts = {
      message: say('sash.tilt.message'),
      allowed: say('sash.tilt.allowed'),
      fix: say('sash.tilt.fix'),
    };
    problems.push(told(path('airing.tiltAngle'), texts, 0));
  }
  return problems;
}

/** Monthly values against each other and against the sun at the site. */
function normalsFit(root: unknown, { climate }: SoundParts): Problem[] {
  if (climate?.kind !== 'monthly') return [];
  const latitude = valueAt(root, ['site', 'latitude']);
  const known = typeof latitude === 'number' && Math.abs(latitude) <= 90 ? latitude : undefined;
  return normalsProblems(climate.normals, known).map((p) =>
    placed(p, (field) => `climate.normals.${field}`),
  );
}

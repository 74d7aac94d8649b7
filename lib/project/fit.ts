import { validateBlind, type Blind } from '../blind/index.ts';
import { normalsProblems } from '../climate/index.ts';
import { validateGlazing } from '../glazing/index.ts';
import { validateOpening } from '../opening/index.ts';
import type { Problem } from '../problem/index.ts';
import { geometryOf } from './geometry.ts';
import { show } from './issues.ts';
import type { ProjectLibrary } from './library.ts';
import type { Part, SoundParts } from './parts.ts';
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
    {
      path: path('setBack'),
      message: `sets the glass behind the inner face of wall "${wall.id}"`,
      value: show(opening.setBack),
      allowed: `0 to ${wall.thickness} m, the thickness of the wall`,
      fix: 'Measure from the outer face of the wall in to the glass, or correct the thickness.',
    },
  ];
}

function wallAreas(root: unknown, parts: SoundParts): Problem[] {
  return parts.walls.flatMap(({ at, item: wall }) => {
    const openings = parts.openings.filter((o) => o.item.wall === wall.id);
    const sum = openings.reduce((s, { item: o }) => s + o.width * o.height * o.count, 0);
    if (wall.area === undefined || sum <= wall.area) return [];
    return [
      {
        path: `${pathText(root, ['walls', at])}.area`,
        message: 'is smaller than the openings in this wall',
        value: show(wall.area),
        allowed: `at least ${Number(sum.toFixed(3))} m2, the sum of its openings`,
        fix: 'Give the gross area, openings included, or leave it out.',
      },
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
    problems.push({
      path: path('blind.schedule'),
      message: 'is given beside a group, which has a schedule of its own',
      value: show(use.schedule),
      allowed: 'a schedule or a group, not both',
      fix: 'Delete one of them.',
    });
  }
  const blind = use && blinds.get(use.blind);
  const angle = use?.standingAngle;
  if (blind?.kind === 'slats' && angle !== undefined) {
    if (angle < blind.angleMin || angle > blind.angleMax) {
      problems.push({
        path: path('blind.standingAngle'),
        message: `is out of reach of the drive of "${blind.id}"`,
        value: show(angle),
        allowed: `${blind.angleMin} to ${blind.angleMax} degrees`,
        fix: 'Take an angle the drive reaches.',
      });
    }
  }
  const screen = opening.insectScreen && blinds.get(opening.insectScreen.blind);
  if (screen && !(screen.kind === 'fabric' && screen.openness >= LEAST_MESH)) {
    problems.push({
      path: path('insectScreen.blind'),
      message: screen.kind === 'fabric' ? 'is too dense for a mesh' : 'is no fabric',
      value: show(screen.id),
      allowed: `the id of a fabric with an openness of at least ${LEAST_MESH}`,
      fix: 'Name an insect mesh.',
    });
  }
  return problems;
}

function sashFit(opening: ProjectOpening, path: PathOf): Problem[] {
  const sash = opening.airing;
  if (!sash || sash.kind === 'none') return [];
  const problems: Problem[] = [];
  for (const side of ['width', 'height'] as const) {
    if (sash[side] <= opening[side]) continue;
    problems.push({
      path: path(`airing.${side}`),
      message: 'is more than that of the opening',
      value: show(sash[side]),
      allowed: `at most ${opening[side]} m, the ${side} of the opening`,
      fix: `Measure the clear ${side} of the hole the sash leaves.`,
    });
  }
  if (sash.kind === 'tilt' && sash.tiltAngle === 0) {
    problems.push({
      path: path('airing.tiltAngle'),
      message: 'must be more than 0 for a sash that tilts',
      value: '0',
      allowed: 'more than 0, up to 90 degrees',
      fix: 'Measure the angle (4 to 10 degrees is usual), or set the kind to "none".',
    });
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

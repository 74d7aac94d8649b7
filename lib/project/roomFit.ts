import { windowU, type Glazing } from '../glazing/index.ts';
import { validateOpening } from '../opening/index.ts';
import { verbatim, type Problem } from '../problem/index.ts';
import { validateRoom, type Room, type RoomCheck, type RoomOpening } from '../room/index.ts';
import { geometryOf } from './geometry.ts';
import type { ProjectLibrary } from './library.ts';
import type { Part, SoundParts } from './parts.ts';
import { say, told } from './say.ts';
import type { ProjectOpening } from './schema.ts';
import { keysOf, pathText } from './walk.ts';

/** What keeps the rooms from being run with their openings, and what looks odd in them. */
export function roomChecks(root: unknown, parts: SoundParts, library: ProjectLibrary): RoomCheck {
  const glazings = new Map(
    [...library.glazings, ...parts.glazings.map((p) => p.item)].map((g) => [g.id, g]),
  );
  const sound = parts.openings.filter(({ item }) => validateOpening(geometryOf(item)).length === 0);
  const check: RoomCheck = { problems: strangers(root, parts), warnings: [] };
  for (const { at, item: room } of parts.rooms) {
    const own = sound.filter((p) => p.item.room === room.id && glazings.has(p.item.glazing));
    const openings = own.map(({ item }) => roomOpening(item, glazings.get(item.glazing)!));
    const { problems, warnings } = validateRoom(onlyOwn(room, openings), openings, '');
    const place = (p: Problem) => inFile(p, at, own, root);
    check.problems.push(...problems.map(place));
    check.warnings.push(...warnings.map(place));
  }
  return check;
}

/** What a room must know of an opening to be checked; flow factors are checked where they stand. */
function roomOpening(opening: ProjectOpening, glazing: Glazing): RoomOpening {
  const { width, height, frame, count } = opening;
  const { hidden, Uf, psiSpacer, psiInstall } = frame;
  const sizes = { width, height, frame: frame.widths, hidden };
  const { area, UwInstalled } = windowU({ ...sizes, Ug: glazing.Ug, Uf, psiSpacer, psiInstall });
  return {
    id: opening.id,
    area: area * count,
    U: UwInstalled,
    airing: opening.airing ?? { kind: 'none', width: 0, height: 0, tiltAngle: 0 },
    screenFlowFactor: 1,
    blindFlowFactor: 1,
  };
}

/** The room with what its airing rules name elsewhere left out: that is told by `strangers`. */
function onlyOwn(room: Room, openings: readonly RoomOpening[]): Room {
  const own = openings.map((o) => o.id);
  const airing = room.airing.map((rule) =>
    rule.openings ? { ...rule, openings: rule.openings.filter((id) => own.includes(id)) } : rule,
  );
  return { ...room, airing };
}

/** Openings of another room in an airing rule. */
function strangers(root: unknown, parts: SoundParts): Problem[] {
  const openings = new Map(parts.openings.map((p) => [p.item.id, p.item]));
  return parts.rooms.flatMap(({ at, item: room }) => {
    const own = [...openings.values()].filter((o) => o.room === room.id).map((o) => o.id);
    return room.airing.flatMap((rule, r) =>
      (rule.openings ?? []).flatMap((id, i) => {
        const opening = openings.get(id);
        if (!opening || opening.room === room.id) return [];
        return [
          told(
            pathText(root, ['rooms', at, 'airing', r, 'openings', i]),
            {
              message: say('stranger.message'),
              allowed: own.length > 0 ? verbatim(own.join(', ')) : say('stranger.none'),
              fix: say('stranger.fix'),
            },
            id,
          ),
        ];
      }),
    );
  });
}

/** Openings stand beside the rooms in the file; a U-value out of range is one of the frame. */
function inFile(
  problem: Problem,
  room: number,
  own: readonly Part<ProjectOpening>[],
  root: unknown,
): Problem {
  const whole = problem.allowed === undefined ? withAllowed(problem) : problem;
  const placed = (path: PropertyKey[]) => ({ ...whole, path: pathText(root, path) });
  const [list, index, ...field] = keysOf(problem.path);
  if (list !== 'openings') return placed(['rooms', room, ...keysOf(problem.path)]);
  const part = own[Number(index)];
  if (!part) return placed(['openings']);
  return placed(['openings', part.at, ...(field[0] === 'U' ? ['frame', 'Uf'] : field)]);
}

function withAllowed(problem: Problem): Problem {
  const allowed = say('fitsOthers');
  const texts = problem.texts && { ...problem.texts, allowed };
  return { ...problem, allowed: allowed.english, ...(texts && { texts }) };
}

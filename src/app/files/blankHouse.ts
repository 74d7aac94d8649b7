import type { ClimateStation } from '../../../lib/climate/index.ts';
import { defaultProject, newOpening, newWall } from '../../../lib/project/index.ts';
import type { Project, ProjectWall } from '../../../lib/project/index.ts';
import type { Wording } from '../../words/index.ts';
import { compassName } from '../parts/compass.ts';

type Room = Project['rooms'][number];

/** Kinds of openings a blank start asks for. */
export type StartKind = 'window' | 'door' | 'fixed';

/** The four answers a house starts from. */
export interface StartAnswers {
  station: ClimateStation;
  /** Which way the wall faces, degrees clockwise from north. */
  azimuth: number;
  /** How many openings of each kind are in it. */
  counts: Record<StartKind, number>;
  /** Thickness of the walls, m. */
  thickness: number;
  units: Project['units'];
}

/**
 * A house of four walls and one room, with the openings asked for in the first wall; what is in it
 * is named in the language of the page.
 */
export function blankHouse(words: Wording, answers: StartAnswers): Project {
  const { station, azimuth, counts, thickness, units } = answers;
  const t = words.of('shell');
  const project = defaultProject();
  const walls: ProjectWall[] = [];
  for (const turn of [0, 90, 180, 270]) {
    const taken = walls.map((wall) => wall.id);
    const wall = newWall((azimuth + turn) % 360, taken);
    const side = compassName(words, wall.azimuth);
    walls.push({ ...wall, name: capital(t('house.wall', { side })), thickness });
  }
  const [first] = walls;
  const place = { wall: first.id, room: project.rooms[0].id };
  const side = compassName(words, azimuth);
  const openings = (Object.keys(counts) as StartKind[])
    .filter((kind) => counts[kind] > 0)
    .map((kind) => {
      const opening = newOpening(kind, place);
      const setBack = Math.min(opening.setBack, Number((thickness / 2).toFixed(3)));
      return {
        ...opening,
        name: capital(t(`house.${kind}`, { count: counts[kind], side })),
        count: counts[kind],
        setBack,
        reveal: { head: setBack, sill: setBack, left: setBack, right: setBack },
      };
    });
  const { name, latitude, longitude, elevation, timeZone } = station;
  return {
    ...project,
    name: t('house.name', { place: name.split(',')[0] }),
    units,
    site: { ...project.site, name, latitude, longitude, elevation, timeZone },
    climate: { kind: 'station', station: station.id, seed: 1 },
    walls,
    openings,
    rooms: project.rooms.map((room) => namedRoom(words, room)),
  };
}

/** A room of the default project, which has its names in English. */
function namedRoom(words: Wording, room: Room): Room {
  const t = words.of('shell');
  const { envelope } = room;
  const names = [t('house.walls'), t('house.roof'), t('house.floor')];
  return {
    ...room,
    name: t('house.room'),
    envelope:
      envelope.kind === 'parts'
        ? { ...envelope, parts: envelope.parts.map((p, i) => ({ ...p, name: names[i] ?? p.name })) }
        : envelope,
    airing: room.airing.map((rule) => ({ ...rule, name: t('house.airing') })),
  };
}

function capital(text: string): string {
  return text[0].toUpperCase() + text.slice(1);
}

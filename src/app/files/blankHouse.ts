import type { ClimateStation } from '../../../lib/climate/index.ts';
import { defaultProject, newOpening, newWall } from '../../../lib/project/index.ts';
import type { Project, ProjectWall } from '../../../lib/project/index.ts';
import { compassWord } from '../../../lib/findings/index.ts';

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

const NOUNS: Record<StartKind, string> = {
  window: 'window',
  door: 'glazed door',
  fixed: 'fixed pane',
};

/** A house of four walls and one room, with the openings asked for in the first wall. */
export function blankHouse(answers: StartAnswers): Project {
  const { station, azimuth, counts, thickness, units } = answers;
  const project = defaultProject();
  const walls: ProjectWall[] = [];
  for (const turn of [0, 90, 180, 270]) {
    const taken = walls.map((wall) => wall.id);
    walls.push({ ...newWall((azimuth + turn) % 360, taken), thickness });
  }
  const [first] = walls;
  const place = { wall: first.id, room: project.rooms[0].id };
  const word = compassWord(azimuth);
  const openings = (Object.keys(counts) as StartKind[])
    .filter((kind) => counts[kind] > 0)
    .map((kind) => {
      const opening = newOpening(kind, place);
      const setBack = Math.min(opening.setBack, Number((thickness / 2).toFixed(3)));
      return {
        ...opening,
        name: capital(`${word} ${NOUNS[kind]}${counts[kind] > 1 ? 's' : ''}`),
        count: counts[kind],
        setBack,
        reveal: { head: setBack, sill: setBack, left: setBack, right: setBack },
      };
    });
  const { name, latitude, longitude, elevation, timeZone } = station;
  return {
    ...project,
    name: `House in ${name.split(',')[0]}`,
    units,
    site: { ...project.site, name, latitude, longitude, elevation, timeZone },
    climate: { kind: 'station', station: station.id, seed: 1 },
    walls,
    openings,
  };
}

function capital(text: string): string {
  return text[0].toUpperCase() + text.slice(1);
}

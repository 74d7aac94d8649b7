import { defaultProject, newOpening } from '../../lib/project/index.ts';
import type { ProjectOpening } from '../../lib/project/index.ts';
import { defaultRoom } from '../../lib/room/index.ts';
import type { Room } from '../../lib/room/index.ts';

/** Inputs whose default has a source, by their path in the project file. */
export const DEFAULT_PATHS = {
  albedo: 'site.albedo',
  windExposure: 'site.windExposure',
  thickness: 'walls[].thickness',
  wallU: 'walls[].U',
  widths: 'openings[].frame.widths',
  Uf: 'openings[].frame.Uf',
  psiSpacer: 'openings[].frame.psiSpacer',
  psiInstall: 'openings[].frame.psiInstall',
  setBack: 'openings[].setBack',
  reveal: 'openings[].reveal',
  revealReflectance: 'openings[].revealReflectance',
  sash: 'openings[].airing',
  volume: 'rooms[].volume',
  mass: 'rooms[].mass',
  envelope: 'rooms[].envelope',
  thermalBridges: 'rooms[].thermalBridges',
  infiltration: 'rooms[].infiltration',
  ventilation: 'rooms[].ventilation',
  people: 'rooms[].people',
  appliances: 'rooms[].appliances',
  heating: 'rooms[].heating',
  occupied: 'rooms[].occupied',
  skyModel: 'settings.skyModel',
  criterion: 'settings.criterion',
  adaptiveCategory: 'settings.adaptiveCategory',
  dinRegion: 'settings.dinRegion',
  overheatingLimit: 'settings.overheatingLimit',
  overheatingShare: 'settings.overheatingShare',
} as const;

export type DefaultKey = keyof typeof DEFAULT_PATHS;

/** Sign behind an input that is the program's default. */
export const MARK = '†';

/** Marks inputs that equal the program's default and remembers which. */
export class DefaultMarks {
  readonly used = new Set<DefaultKey>();

  /** A text with the mark where the value is the default one. */
  of(text: string, key: DefaultKey, value: unknown, usual: unknown): string {
    if (JSON.stringify(value) !== JSON.stringify(usual)) return text;
    this.used.add(key);
    return `${text}\u00a0${MARK}`;
  }
}

/** What an opening, a room and a project would be without the user's figures. */
export function usualOpening(opening: ProjectOpening): ProjectOpening {
  const { kind, wall, room } = opening;
  return newOpening(kind, { wall, room });
}

export function usualRoom({ id, name, use, floorArea }: Room): Room {
  return defaultRoom(id, name, use, floorArea);
}

export const usualProject = defaultProject();

import { defaultRoom, nightAiring, roomDefaults } from '../room/index.ts';
import { FORMAT, VERSION } from './format.ts';
import type { Project, ProjectOpening, ProjectWall } from './schema.ts';

type OpeningKind = ProjectOpening['kind'];

/** Sizes of a new opening by kind, m. */
const SIZES: Record<OpeningKind, { width: number; height: number; sillHeight: number }> = {
  window: { width: 1.2, height: 1.4, sillHeight: 0.9 },
  door: { width: 1.219, height: 2.438, sillHeight: 0 },
  rooflight: { width: 0.8, height: 1.2, sillHeight: 2.2 },
  fixed: { width: 1.8, height: 1.4, sillHeight: 0.6 },
};

const NAMES: Record<OpeningKind, string> = {
  window: 'Window',
  door: 'Door',
  rooflight: 'Roof-light',
  fixed: 'Fixed pane',
};

/** Frames of a very low energy house by kind: seen widths, m, and losses, W/m2K and W/mK. */
const OPENING_SASH = frame(0.12, 0.13, { Uf: 0.76, psiSpacer: 0.03, psiInstall: 0.04 });
const FRAMES: Record<OpeningKind, ProjectOpening['frame']> = {
  window: OPENING_SASH,
  door: OPENING_SASH,
  rooflight: frame(0.1, 0.1, { Uf: 1.2, psiSpacer: 0.04, psiInstall: 0.06 }),
  fixed: frame(0.085, 0.095, { Uf: 0.72, psiSpacer: 0.03, psiInstall: 0.04 }),
};

function frame(
  width: number,
  sill: number,
  losses: { Uf: number; psiSpacer: number; psiInstall: number },
): ProjectOpening['frame'] {
  return { widths: { head: width, sill, left: width, right: width }, ...losses };
}

/** Glass behind the outer face of the wall or roof, m. */
const SET_BACK = 0.14;
const ROOF_SET_BACK = 0.02;

/** Glazing of a new opening: one of those that ship with the program. */
export const DEFAULT_GLAZING = 'triple-low-e';
const ROOF_GLAZING = 'roof-light-triple';
export const DEFAULT_STATION = 'burlington-vt';

/** The first of `base`, `base-2`, `base-3` ... that is not taken. */
export function freeId(base: string, taken: Iterable<string> = []): string {
  const used = new Set(taken);
  let id = base;
  for (let n = 2; used.has(id); n++) id = `${base}-${n}`;
  return id;
}

/** A wall of a very well insulated house; its id is free among `taken`. */
export function newWall(azimuth: number, taken: Iterable<string> = []): ProjectWall {
  const word = compassWord(azimuth);
  return {
    id: freeId(`${word}-wall`, taken),
    name: `${word[0].toUpperCase()}${word.slice(1)} wall`,
    azimuth,
    tilt: 90,
    thickness: 0.42,
    U: 0.12,
  };
}

const COMPASS = [
  'north',
  'north-east',
  'east',
  'south-east',
  'south',
  'south-west',
  'west',
  'north-west',
];

function compassWord(azimuth: number): string {
  return COMPASS[Math.round((((azimuth % 360) + 360) % 360) / 45) % 8];
}

/** An opening of a usual size for its kind, without shading; its id is free among `taken`. */
export function newOpening(
  kind: OpeningKind,
  place: { wall: string; room: string; glazing?: string },
  taken: Iterable<string> = [],
): ProjectOpening {
  const size = SIZES[kind];
  const setBack = kind === 'rooflight' ? ROOF_SET_BACK : SET_BACK;
  return {
    id: freeId(kind, taken),
    name: NAMES[kind],
    wall: place.wall,
    room: place.room,
    kind,
    ...size,
    count: 1,
    frame: structuredClone(FRAMES[kind]),
    setBack,
    reveal: { head: setBack, sill: setBack, left: setBack, right: setBack },
    revealReflectance: 0.5,
    glazing: place.glazing ?? (kind === 'rooflight' ? ROOF_GLAZING : DEFAULT_GLAZING),
    airing: sashOf(kind, size),
    ...(kind === 'door' ? { escapeRoute: true } : {}),
  };
}

/** Tilt of a new sash, degrees. */
const TILTS: Record<OpeningKind, number> = {
  window: roomDefaults.tiltAngle,
  door: 0,
  rooflight: 20,
  fixed: 0,
};

function sashOf(
  kind: OpeningKind,
  size: { width: number; height: number },
): NonNullable<ProjectOpening['airing']> {
  if (kind === 'fixed') return { kind: 'none', width: 0, height: 0, tiltAngle: 0 };
  const { head, sill, left, right } = FRAMES[kind].widths;
  const millimetre = (x: number) => Number(x.toFixed(3));
  return {
    kind: kind === 'rooflight' ? 'tilt' : 'turn',
    width: millimetre(size.width - left - right),
    height: millimetre(size.height - head - sill),
    tiltAngle: TILTS[kind],
  };
}

/** A new project: one room with four walls and a south window. */
export function defaultProject(): Project {
  const walls = [0, 90, 180, 270].map((azimuth) => newWall(azimuth));
  const room = { ...defaultRoom('room', 'Living room', 'living', 40), airing: [nightAiring()] };
  return {
    format: FORMAT,
    version: VERSION,
    name: 'New house',
    notes: '',
    units: 'metric',
    site: {
      name: 'Burlington, Vermont',
      latitude: 44.47,
      longitude: -73.15,
      elevation: 101,
      timeZone: 'America/New_York',
      albedo: 0.2,
      horizon: [],
      windExposure: 0.55,
    },
    year: 2026,
    climate: { kind: 'station', station: DEFAULT_STATION, seed: 1 },
    walls,
    openings: [
      {
        ...newOpening('window', { wall: walls[2].id, room: room.id }),
        id: 'south-window',
        name: 'South window',
      },
    ],
    glazings: [],
    blinds: [],
    schedules: [],
    groups: [],
    rooms: [room],
    settings: {
      skyModel: 'perez',
      criterion: 'shareAbove',
      overheatingLimit: 25,
      overheatingShare: 0.1,
      adaptiveCategory: 'II',
      dinRegion: 'B',
    },
  };
}

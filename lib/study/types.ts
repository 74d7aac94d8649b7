import type { Blind, FabricBlind } from '../blind/index.ts';
import type { Glazing } from '../glazing/index.ts';
import type { OpeningGeometry, Plane } from '../opening/index.ts';
import type { RoomOpening } from '../room/index.ts';
import type { Schedule } from '../schedule/index.ts';

/** A fabric over part of an opening from one day of the year to another. */
export interface ScreenInPlace {
  fabric: FabricBlind;
  /** Part of the glass it covers, 0 to 1. */
  share: number;
  /** Day indices 0 to 364, both included; `to` before `from` runs over the turn of the year. */
  from: number;
  to: number;
}

export interface BlindInPlace {
  blind: Blind;
  /** Slat angle when simply lowered, degrees. */
  standingAngle: number;
  /** Wind speed above which it is raised, m/s. */
  windLimit?: number;
  /** Which controller moves it. */
  controller: string;
}

/** An opening with everything it refers to at hand. */
export interface HouseOpening {
  id: string;
  name: string;
  wall: string;
  room: string;
  /** Identical units. */
  count: number;
  plane: Plane;
  geometry: OpeningGeometry;
  glazing: Glazing;
  screen?: ScreenInPlace;
  blind?: BlindInPlace;
  /** Area, U-value and sash of all its units, for the room. */
  inRoom: RoomOpening;
}

/** What moves one blind, or a group of them by one remote channel. */
export interface Controller {
  id: string;
  name: string;
  schedule: Schedule;
  /** Opening whose sensors count; `any`: the strongest reading of all members. */
  lead: string;
  members: string[];
}

export interface HouseWall {
  id: string;
  name: string;
  plane: Plane;
}

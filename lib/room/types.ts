/**
 * A room as the project file keeps it: plain data, SI units. Clock spans count minutes after
 * midnight of the local clock; `to` not after `from` runs past midnight, equal means all day.
 */

export type RoomUse = 'living' | 'bedroom' | 'work' | 'other';

/** Heaviness classes of EN ISO 13790:2008, table 12. */
export type MassClass = 'veryLight' | 'light' | 'medium' | 'heavy' | 'veryHeavy';

/** One layer of a build-up. */
export interface MassLayer {
  name?: string;
  /** m */
  thickness: number;
  /** W/mK */
  conductivity: number;
  /** kg/m3 */
  density: number;
  /** J/kgK */
  specificHeat: number;
}

/** An inner surface and the layers behind it, from the room outwards. */
export interface MassSurface {
  name: string;
  /** m2, one face. */
  area: number;
  /** From the room outwards: up to the insulation, or up to the middle of a wall inside the house. */
  layers: MassLayer[];
  /** Name of the opaque part it is the inner side of; absent for partitions, floors between storeys and furniture. */
  part?: string;
  /** Weight of this surface in sharing out the sun that comes in, per m2; 1 where absent. */
  sunWeight?: number;
}

/** What stores heat in the room. */
export type RoomMass =
  | { kind: 'class'; class: MassClass }
  /** Heat capacity in J/K and the area that exchanges it in m2 (C_m and A_m of EN ISO 13790). */
  | { kind: 'value'; heatCapacity: number; massArea: number }
  | { kind: 'layers'; surfaces: MassSurface[] };

/** Wall, roof or floor without its openings. */
export interface OpaquePart {
  name: string;
  /** m2 */
  area: number;
  /** W/m2K, surface resistances included. */
  U: number;
  /**
   * What lies behind: outdoor air, the ground, or another room. A part to another room without a
   * temperature of its own loses nothing.
   */
  boundary: 'outdoor' | 'ground' | 'room';
  /** Steady temperature behind it, C, for `ground` and `room`; ground without one takes the year's mean outdoor temperature. */
  temperature?: number;
  /** Share of the sun its outer face takes up; absent: the sun on it is left out. */
  solarAbsorptance?: number;
}

export type RoomEnvelope =
  | { kind: 'parts'; parts: OpaquePart[] }
  /** Heat loss of all opaque parts together, W/K: to outdoors and, where known apart, to the ground. */
  | { kind: 'total'; UA: number; groundUA?: number };

/** Air that leaks in, as a yearly mean. */
export type Infiltration =
  /** Air changes at 50 Pa (1/h) times the shielding coefficient e of EN ISO 13789:2007, annex C. */
  | { kind: 'n50'; n50: number; shielding: number }
  /** Air changes, 1/h. */
  | { kind: 'ach'; ach: number };

/** Air that a fan or a grille brings in. */
export interface Ventilation {
  flow: { kind: 'ach'; ach: number } | { kind: 'volume'; m3PerHour: number };
  /** Share of the heat given back, 0 to 1; 0 without heat recovery. */
  heatRecovery: number;
  /** Recovery is passed by while it is warmer than this inside (C) and cooler outside than inside; absent: never. */
  bypassAbove?: number;
}

/** Watts for each hour of the local clock, 24 values: value h holds from h:00 to h+1:00. */
export interface DayProfiles {
  weekday: number[];
  weekend: number[];
}

export interface ClockSpan {
  /** Minutes after midnight, whole quarter hours, 0 to 1440. */
  from: number;
  to: number;
}

/** When somebody is in the room. */
export interface OccupiedHours {
  weekday: ClockSpan[];
  weekend: ClockSpan[];
}

export interface HeatingOrCooling {
  /** Operative temperature held, C. */
  setPoint: number;
  /** W; as much as needed where absent. */
  maxPower?: number;
}

/** When sashes are opened. All conditions of a rule must hold; the first rule that opens a sash sets it. */
export interface AiringRule {
  id: string;
  name?: string;
  /** Ids of the openings; absent: every sash that opens. */
  openings?: string[];
  /** A sash that only tilts is tilted by `turn` as well; one that only turns stays shut under `tilt`. */
  position: 'tilt' | 'turn';
  /** Months 1 to 12; absent: all. */
  months?: number[];
  /** Local clock; absent: all day. */
  clock?: ClockSpan;
  /** Opens when it is this warm inside or warmer, C. */
  openAbove: number;
  /** Shuts when it is this cool inside or cooler, C; below `openAbove`. */
  closeBelow: number;
  /** Opens when it is at least this much warmer inside than outside, K; shuts when it no longer is warmer. */
  margin: number;
  /** What stays open while nobody is in. */
  whenVacant: 'open' | 'tilt' | 'closed';
  /** Shut at this wind speed and above, m/s; absent: never. */
  windLimit?: number;
}

/** A room of the house: everything but its openings. */
export interface Room {
  id: string;
  name: string;
  use: RoomUse;
  /** m2, inside the walls. */
  floorArea: number;
  /** m3 of air. */
  volume: number;
  mass: RoomMass;
  envelope: RoomEnvelope;
  /** Losses along edges and joints to outdoors, other than around windows, W/K. */
  thermalBridges: number;
  infiltration: Infiltration;
  ventilation: Ventilation;
  people: DayProfiles;
  appliances: DayProfiles;
  /** Absent: not heated. */
  heating?: HeatingOrCooling;
  /** Absent: not cooled. */
  cooling?: HeatingOrCooling;
  occupied: OccupiedHours;
  airing: AiringRule[];
}

/** How a sash opens. A `turn` sash also tilts where it has a tilt angle. */
export interface Sash {
  kind: 'none' | 'tilt' | 'turn';
  /** Clear size of the sash's hole, m. */
  width: number;
  height: number;
  /** Degrees from shut when tilted; 0: it cannot tilt. */
  tiltAngle: number;
}

/** What the room must know of an opening. */
export interface RoomOpening {
  id: string;
  /** m2, frame included. */
  area: number;
  /** W/m2K of the whole window as installed. */
  U: number;
  airing: Sash;
  /** What an insect screen leaves of the airing flow while it is fitted, 0 to 1. */
  screenFlowFactor: number;
  /** What a lowered blind leaves of the airing flow, 0 to 1. */
  blindFlowFactor: number;
}

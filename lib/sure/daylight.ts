import { occupiedDaylight, stepsByAction } from '../decide/index.ts';
import { blindOptics, diffuseOptics, insectScreenFactor } from '../blind/index.ts';
import type { Blind, BlindSetting } from '../blind/index.ts';
import type { RuleAction } from '../schedule/index.ts';
import { STEPS_PER_HOUR } from '../time/index.ts';
import type { YearCalendar } from '../time/index.ts';
import { daysInSeason, resolveHouse } from '../study/index.ts';
import type {
  BlindInPlace,
  HouseOpening,
  ScreenInPlace,
  StudyInput,
  StudyResult,
} from '../study/index.ts';

/**
 * Glass area times visible transmittance over floor area, in per cent, as a mean over the occupied
 * daylight hours: a plain measure to compare schemes by, not a daylight factor.
 */
export interface Daylight {
  /** With screens and blinds as they stand hour by hour. */
  left: number;
  /** Of the bare glass. */
  bare: number;
}

/** What view and daylight of a house come to. */
export interface ViewAndDaylight {
  daylight: Daylight;
  viewHours: number;
  viewHoursCovered: number;
}

/**
 * Daylight and view over the occupied daylight hours. A covered part of the glass lets through what
 * its blind does of an evenly bright sky and ground; blinds and screens are known by their solar
 * transmittance, which stands for the visible (within a few per cent for white, grey and metal, less
 * sure for coloured cloth: common practice). Slats that follow the sun count at their standing
 * angle. Reveals, horizon and the room's depth are left out.
 */
export function daylightLeft(
  { project, library }: Pick<StudyInput, 'project' | 'library'>,
  result: StudyResult,
  sunUp: Uint8Array,
): ViewAndDaylight {
  const house = resolveHouse(project, library);
  const floor = result.rooms.reduce((sum, r) => sum + r.floorArea, 0);
  const total = { left: 0, bare: 0, hours: 0, covered: 0, area: 0 };
  result.openings.forEach((opening, i) => {
    const room = result.rooms.find((r) => r.id === opening.room);
    if (!room) return;
    const { occupied } = room.runs.with.model;
    const source = house.openings[i];
    const mean = meanShares(source, opening.blind, occupied, sunUp, result);
    const light = opening.glassArea * source.glazing.visibleTransmittance;
    total.left += light * mean.passed;
    total.bare += light;
    total.hours += opening.glassArea * mean.hours;
    total.covered += opening.glassArea * mean.covered;
    total.area += opening.glassArea;
  });
  const perGlass = (value: number) => (total.area > 0 ? value / total.area : 0);
  const ofFloor = (value: number) => (floor > 0 ? (100 * value) / floor : 0);
  return {
    daylight: { left: ofFloor(total.left), bare: ofFloor(total.bare) },
    viewHours: perGlass(total.hours),
    viewHoursCovered: perGlass(total.covered),
  };
}

interface Shares {
  /** Occupied daylight hours, and the same by the share of the glass that is covered. */
  hours: number;
  covered: number;
  /** Mean share of the light that passes screen and blind in these hours; 1 where there are none. */
  passed: number;
}

function meanShares(
  { blind, screen }: HouseOpening,
  moved: StudyResult['openings'][number]['blind'],
  occupied: Uint8Array,
  sunUp: Uint8Array,
  { calendar }: StudyResult,
): Shares {
  const share = (moved?.actions ?? []).map(coveredShare);
  const through = (moved?.actions ?? []).map((action, k) =>
    blind ? 1 - share[k] * (1 - lightThrough(action, blind)) : 1,
  );
  const steps = occupiedDaylight(occupied, sunUp);
  /** Sum over some steps of what each is worth by the blind's action; `raised` without a blind. */
  const sum = (some: Uint32Array, worth: readonly number[], raised: number) =>
    moved
      ? stepsByAction(moved.state, some).reduce((all, n, k) => all + n * (worth[k] ?? 0), 0)
      : some.length * raised;
  const covered = sum(steps, share, 0);
  let passed = sum(steps, through, 1);
  if (screen) {
    const { diffuse } = insectScreenFactor(screen.fabric, screen.share);
    passed -= (1 - diffuse) * sum(stepsInSeason(steps, screen, calendar), through, 1);
  }
  return {
    hours: steps.length / STEPS_PER_HOUR,
    covered: covered / STEPS_PER_HOUR,
    passed: steps.length > 0 ? passed / steps.length : 1,
  };
}

function coveredShare(action: RuleAction): number {
  return action.kind === 'raise' ? 0 : (action.share ?? 1);
}

const keptLight = new WeakMap<Blind, Map<number, number>>();

/** Share of evenly bright light that a lowered blind lets through; kept by blind and slat angle. */
function lightThrough(action: RuleAction, { blind, standingAngle }: BlindInPlace): number {
  const wanted = action.kind === 'tilt' ? action.angle : standingAngle;
  const angle =
    blind.kind === 'slats' ? Math.min(Math.max(wanted, blind.angleMin), blind.angleMax) : 0;
  const kept = keptLight.get(blind) ?? new Map<number, number>();
  keptLight.set(blind, kept);
  let through = kept.get(angle);
  if (through === undefined) {
    const setting: BlindSetting =
      blind.kind === 'slats' ? { kind: 'tilt', angle } : { kind: 'down' };
    const { all } = diffuseOptics(blindOptics(blind, setting));
    through = all.tauDirect + all.tauDiffuse;
    kept.set(angle, through);
  }
  return through;
}

/** Those of some steps that fall on days on which a screen hangs. */
function stepsInSeason(
  steps: Uint32Array,
  { from, to }: ScreenInPlace,
  { day }: YearCalendar,
): Uint32Array {
  const season = daysInSeason(from, to);
  return steps.filter((step) => season[day[step]] === 1);
}

import { HOURS, daysInMonth } from '../../time/index.ts';
import { brlExponent } from './brl.ts';
import { monthStart } from './months.ts';
import { meetSum } from './solve.ts';
import type { SumAndSlope } from './solve.ts';
import type { SunHours } from './sunHours.ts';

/** Hours with less sun outside the atmosphere than this are taken as diffuse, W/m2. */
const TOO_LOW = 15;

/** How far the split may lean towards low or high sun, on the scale of the exponent. */
const MOST_TILT = 1.5;

export interface SplitTargets {
  /** Monthly mean of daily diffuse, Wh/m2; 12 values. */
  dhi?: ArrayLike<number>;
  /** Monthly mean of daily direct normal, Wh/m2; 12 values. Used along with diffuse only. */
  dni?: ArrayLike<number>;
}

export interface SplitYear {
  /** Direct normal and diffuse horizontal, W/m2; HOURS values each. */
  dni: Float64Array;
  dhi: Float64Array;
  /** Months, 0 to 11, whose given diffuse could not be met within 2 percent. */
  missed: number[];
}

/**
 * Splits hourly global into beam and diffuse by Ridley, Boland & Lauret (2010), so that
 * ghi = dni cos z + dhi in every hour. Where monthly diffuse is given, the month's exponents are
 * shifted until it is met; where direct normal is given too, they also lean with the logarithm of
 * the sun's height, which moves beam between low and high sun, as far as MOST_TILT.
 *
 * @param solarOffset hours from the hour of the year to mean solar time
 */
export function splitYear(
  sun: SunHours,
  ghi: Float64Array,
  solarOffset: number,
  targets: SplitTargets = {},
): SplitYear {
  const exponent = exponents(sun, ghi, solarOffset);
  const dni = new Float64Array(HOURS);
  const dhi = Float64Array.from(ghi);
  const missed: number[] = [];
  const lit = new Uint16Array(31 * 24);
  for (let m = 0; m < 12; m++) {
    let n = 0;
    let global = 0;
    for (let hour = monthStart[m] * 24; hour < monthStart[m + 1] * 24; hour++) {
      global += ghi[hour];
      if (ghi[hour] > 0 && sun.outside[hour] > TOO_LOW) lit[n++] = hour;
    }
    if (n === 0) continue;
    const hours = lit.subarray(0, n);
    const lean = Float64Array.from(hours, (hour) => 1 + Math.log(sun.cosZenith[hour]));
    const month: Month = { sun, ghi, exponent, dni, hours, lean, beam: 0, slope: 0 };
    if (targets.dhi) {
      const diffuse = targets.dhi[m] * daysInMonth[m];
      const direct = targets.dni && targets.dni[m] * daysInMonth[m];
      meetMonth(month, Math.max(global - diffuse, 0), direct);
      if (Math.abs(global - month.beam - diffuse) > 0.02 * diffuse + 10) missed.push(m);
    } else {
      applySplit(month, 0, 0);
    }
    for (const hour of month.hours) {
      dhi[hour] = Math.max(ghi[hour] - dni[hour] * sun.cosZenith[hour], 0);
    }
  }
  return { dni, dhi, missed };
}

interface Month {
  sun: SunHours;
  ghi: Float64Array;
  exponent: Float64Array;
  dni: Float64Array;
  hours: Uint16Array;
  /** How each hour leans with the tilt: the logarithm of the sun's height, about nil at 22 degrees. */
  lean: Float64Array;
  /** Horizontal beam of the last split, Wh/m2, and how fast it grows with the shift. */
  beam: number;
  slope: number;
}

/** Meets the month's horizontal beam and, as nearly as it can, its direct normal, both Wh/m2. */
function meetMonth(month: Month, beam: number, direct?: number): void {
  let shift = meetBeam(month, beam, 0, 0);
  if (direct === undefined) return;
  let low = -MOST_TILT;
  let high = MOST_TILT;
  for (let pass = 0; pass < 8; pass++) {
    const tilt = (low + high) / 2;
    shift = meetBeam(month, beam, tilt, shift);
    let sum = 0;
    for (const hour of month.hours) sum += month.dni[hour];
    if (sum > direct) low = tilt;
    else high = tilt;
  }
}

/** Finds the shift, which it returns, that gives the month's horizontal beam at a tilt. */
function meetBeam(month: Month, beam: number, tilt: number, start: number): number {
  const at = (shift: number, out: SumAndSlope) => {
    applySplit(month, shift, tilt);
    out.sum = month.beam;
    out.slope = month.slope;
  };
  return meetSum(beam, start, -12, 12, at, 1e-5);
}

function applySplit(month: Month, shift: number, tilt: number): void {
  const { sun, ghi, exponent, dni, hours, lean } = month;
  month.beam = 0;
  month.slope = 0;
  for (let i = 0; i < hours.length; i++) {
    const hour = hours[i];
    const cosZenith = sun.cosZenith[hour];
    const share = 1 / (1 + Math.exp(-(exponent[hour] + shift + tilt * lean[i])));
    const beam = ghi[hour] * share;
    const most = sun.dniMost[hour] * cosZenith;
    dni[hour] = Math.min(beam, most) / cosZenith;
    month.beam += Math.min(beam, most);
    if (beam < most) month.slope += beam * (1 - share);
  }
}

function exponents(sun: SunHours, ghi: Float64Array, solarOffset: number): Float64Array {
  const exponent = new Float64Array(HOURS);
  const clearness = (hour: number) =>
    hour >= 0 && hour < HOURS && sun.outside[hour] > TOO_LOW ? ghi[hour] / sun.outside[hour] : -1;
  let ghiDay = 0;
  for (let hour = 0; hour < HOURS; hour++) {
    if (hour % 24 === 0) {
      ghiDay = 0;
      for (let h = hour; h < hour + 24; h++) ghiDay += ghi[h];
    }
    const now = clearness(hour);
    if (now <= 0) continue;
    const before = clearness(hour - 1);
    const after = clearness(hour + 1);
    const sides = (before < 0 ? after : before) + (after < 0 ? before : after);
    exponent[hour] = brlExponent({
      clearness: now,
      solarTime: (((hour + 0.5 + solarOffset) % 24) + 24) % 24,
      altitude: (Math.asin(Math.min(sun.cosZenith[hour], 1)) * 180) / Math.PI,
      dailyClearness: ghiDay / sun.outsideDay[Math.floor(hour / 24)],
      persistence: sides < 0 ? now : sides / 2,
    });
  }
  return exponent;
}

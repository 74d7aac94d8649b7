import type { SunYear } from '../../sun/index.ts';
import { DAYS, HOURS } from '../../time/index.ts';
import { sunOf } from './sun.ts';
import type { YearPlace } from './sun.ts';

/** How far the sun in a file is from where it stands. */
export interface TimeShift {
  /** Minutes the file's sun runs late; negative where it runs early. */
  minutes: number;
  /** 0 to 1; from 0.5 on the figure can be relied on. */
  confidence: number;
  /** Clear days it was found on. */
  days: number;
}

const MOST_DAYS = 40;
/** Greatest part of a clear day's course that its best fitting clear sky leaves unexplained. */
const CLEAR_RESIDUAL = 0.15;
/** Clear days have at least this part of the strength of the year's best. */
const CLEAR_STRENGTH = 0.75;
/** Days with less clear-sky sun than this, Wh/m2, are too short to tell. */
const SHORTEST_DAY = 1500;

/**
 * Finds by how much the stamps of a year are off, from the symmetry of its clear days: the centre
 * of gravity of a clear day's global irradiance lies at solar noon. Days are taken as clear where a
 * clear sky by Haurwitz (1945), "Insolation in relation to cloudiness and cloud density", moved to
 * that centre, follows their hours; so the choice does not lean to any shift. The median of the
 * clearest 40 counts.
 *
 * The method is our own; on public files whose time is known it is within 1 minute.
 */
export function findTimeShift(
  year: YearPlace & { ghi: Float64Array },
  sun: SunYear = sunOf(year),
): TimeShift {
  const clear = clearSkyEnergy(sun);
  const skyNoon = meanClock((hour) => energyBetween(clear, hour, hour + 1));
  const fileNoon = meanClock((hour) => year.ghi[hour]);
  const gross = Math.round(wrap(fileNoon - skyNoon, 24));
  const first = Math.round(skyNoon) - 12;

  const days: DayFit[] = [];
  for (let day = 0; day < DAYS; day++) {
    const fit = fitDay(year.ghi, clear, day * 24 + first, gross);
    if (fit) days.push(fit);
  }
  if (days.length === 0) return { minutes: 0, confidence: 0, days: 0 };
  const strong = quantile(
    days.map((d) => d.strength),
    0.95,
  );
  const chosen = days
    .filter((d) => d.residual < CLEAR_RESIDUAL && d.strength > CLEAR_STRENGTH * strong)
    .sort((a, b) => a.residual - b.residual)
    .slice(0, MOST_DAYS)
    .map((d) => d.shift * 60);
  if (chosen.length === 0) return { minutes: 0, confidence: 0, days: 0 };

  const minutes = quantile(chosen, 0.5);
  const scatter = quantile(
    chosen.map((m) => Math.abs(m - minutes)),
    0.5,
  );
  const enough = Math.min(1, chosen.length / 16);
  return { minutes, confidence: enough * Math.max(0, 1 - scatter / 20), days: chosen.length };
}

interface DayFit {
  /** Hours the day's sun is late. */
  shift: number;
  /** Day's irradiance over that of the clear sky. */
  strength: number;
  /** Part of the day's course left unexplained, 0 to 1. */
  residual: number;
}

/** Compares one day of the file with the clear sky; `begin` is the first hour of the sun's day. */
function fitDay(
  ghi: Float64Array,
  clear: Float64Array,
  begin: number,
  gross: number,
): DayFit | undefined {
  let sky = 0;
  let skyMoment = 0;
  let file = 0;
  let fileMoment = 0;
  for (let i = 0; i < 24; i++) {
    const e = energyBetween(clear, begin + i, begin + i + 1);
    const g = ghi[turn(begin + gross + i)];
    sky += e;
    skyMoment += e * i;
    file += g;
    fileMoment += g * i;
  }
  if (sky < SHORTEST_DAY || file <= 0) return undefined;
  const shift = gross + fileMoment / file - skyMoment / sky;
  let cross = 0;
  let skySquare = 0;
  let fileSquare = 0;
  for (let i = 0; i < 24; i++) {
    const hour = begin + gross + i;
    const e = energyBetween(clear, hour - shift, hour + 1 - shift);
    const g = ghi[turn(hour)];
    cross += g * e;
    skySquare += e * e;
    fileSquare += g * g;
  }
  if (!(skySquare > 0)) return undefined;
  const explained = (cross * cross) / skySquare / fileSquare;
  return {
    shift,
    strength: cross / skySquare,
    residual: Math.sqrt(Math.max(0, 1 - explained)),
  };
}

/** Running sum of a clear sky's global irradiance, Wh/m2, at the ends of the sun's steps. */
function clearSkyEnergy(sun: SunYear): Float64Array {
  const running = new Float64Array(HOURS * sun.stepsPerHour + 1);
  for (let k = 0; k < sun.step.length; k++) {
    const up = sun.up[k];
    running[sun.step[k] + 1] = (1098 * up * Math.exp(-0.057 / up)) / sun.stepsPerHour;
  }
  for (let i = 1; i < running.length; i++) running[i] += running[i - 1];
  return running;
}

/** Energy between two times of the year, hours, on the circle of the year. */
function energyBetween(running: Float64Array, from: number, to: number): number {
  return energyAt(running, to) - energyAt(running, from);
}

function energyAt(running: Float64Array, hours: number): number {
  const last = running.length - 1;
  const turns = Math.floor(hours / HOURS);
  const x = ((hours - turns * HOURS) * last) / HOURS;
  const i = Math.min(Math.floor(x), last - 1);
  return turns * running[last] + running[i] + (running[i + 1] - running[i]) * (x - i);
}

/** Mean hour of the day of a yearly course, weighted by it, on the circle of the day. */
function meanClock(weight: (hour: number) => number): number {
  let east = 0;
  let north = 0;
  for (let hour = 0; hour < HOURS; hour++) {
    const angle = (((hour % 24) + 0.5) * Math.PI) / 12;
    const w = weight(hour);
    north += w * Math.cos(angle);
    east += w * Math.sin(angle);
  }
  return (Math.atan2(east, north) * 12) / Math.PI;
}

function turn(hour: number): number {
  return ((hour % HOURS) + HOURS) % HOURS;
}

/** A difference on a circle, between minus and plus half of it. */
function wrap(difference: number, circle: number): number {
  return difference - circle * Math.round(difference / circle);
}

function quantile(values: number[], q: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * q))];
}

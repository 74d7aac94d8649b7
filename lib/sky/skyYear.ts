import { airMass } from '../sun/index.ts';
import type { SunYear } from '../sun/index.ts';
import { HOURS } from '../time/index.ts';
import { horizonAltitude } from './horizon.ts';
import type { HorizonPoint } from './horizon.ts';
import { circumsolarCosine, perezCoefficients } from './transposition.ts';

export type SkyModel = 'perez' | 'hay-davies';

/** Hourly means, W/m2, HOURS values each. */
export interface HourlyIrradiance {
  ghi: Float64Array;
  dni: Float64Array;
  dhi: Float64Array;
}

export interface SkyOptions {
  model?: SkyModel;
  /** Ground reflectance: one value, or twelve for January to December. */
  albedo: number | readonly number[];
  /** Month 1 to 12 of each hour, needed for twelve albedos; HOURS values. */
  month: Uint8Array;
  /** What stands on the horizon; hides the sun below it. */
  horizon?: readonly HorizonPoint[];
}

/** The sky over a year, before any plane is chosen. Positions are those of the SunYear. */
export interface SkyYear {
  /** Beam normal to the sun at each position, W/m2. */
  beam: Float64Array;
  /** Beam and circumsolar light together, normal to the sun: shaded alike; W/m2. */
  direct: Float64Array;
  /** Even part of the sky: irradiance it gives a horizontal plane, W/m2; HOURS values. */
  isotropic: Float64Array;
  /** Brightening of the horizon: irradiance of an open vertical plane, W/m2, may be negative; HOURS values. */
  horizonBand: Float64Array;
  /** Radiosity of the ground, W/m2; HOURS values. */
  ground: Float64Array;
  /** Direct light that came in hours with no sun above the horizon and was left out, kWh/m2 normal. */
  lostBeam: number;
}

/**
 * Splits a year's irradiance into the parts that are shaded in different ways.
 *
 * An hour's mean beam is spread over its steps with the sun up in the ratio of a clear sky's beam,
 * 0.7^(AM^0.678) (Meinel & Meinel 1976, Applied Solar Energy), so that an hour cut by sunrise keeps
 * its energy and puts it where the sun stands higher. The diffuse parts use the mean altitude of
 * those steps.
 */
export function buildSkyYear(sun: SunYear, year: HourlyIrradiance, options: SkyOptions): SkyYear {
  const n = sun.step.length;
  const beam = new Float64Array(n);
  const direct = new Float64Array(n);
  const isotropic = new Float64Array(HOURS);
  const horizonBand = new Float64Array(HOURS);
  const ground = new Float64Array(HOURS);
  const hidden = hiddenSun(sun, options.horizon ?? []);
  const usePerez = (options.model ?? 'perez') === 'perez';
  const c = { f1: 0, f2: 0 };
  let lostBeam = 0;

  for (let hour = 0; hour < HOURS; hour++) {
    const { albedo } = options;
    const reflectance = typeof albedo === 'number' ? albedo : albedo[options.month[hour] - 1];
    ground[hour] = reflectance * year.ghi[hour];
    const dhi = year.dhi[hour];
    const dni = year.dni[hour];
    const from = sun.hourStart[hour];
    const to = sun.hourStart[hour + 1];
    if (from === to) {
      isotropic[hour] = dhi;
      lostBeam += dni / 1000;
      continue;
    }
    if (dhi <= 0 && dni <= 0) continue;

    const zenith = (Math.acos(Math.min(sun.cosZenith[hour], 1)) * 180) / Math.PI;
    const outside = sun.extraterrestrial[hour];
    if (usePerez) {
      perezCoefficients(dni, dhi, outside, airMass(zenith), zenith, c);
      c.f1 = Math.min(c.f1, 1); // a bright diffuse sky at a low sun would leave a negative rest
    } else {
      c.f1 = Math.min(dni / outside, 1);
      c.f2 = 0;
    }
    isotropic[hour] = dhi * (1 - c.f1);
    horizonBand[hour] = dhi * c.f2;

    spreadBeam(sun, from, to, dni, outside, beam);
    const upShare = (to - from) / sun.stepsPerHour;
    for (let k = from; k < to; k++) {
      if (hidden?.[k]) {
        beam[k] = 0;
        continue;
      }
      direct[k] = beam[k] + (dhi * c.f1) / upShare / circumsolarCosine(sun.up[k]);
    }
  }
  return { beam, direct, isotropic, horizonBand, ground, lostBeam };
}

/** Writes the hour's beam to its positions; their mean over the whole hour is `dni`. */
function spreadBeam(
  sun: SunYear,
  from: number,
  to: number,
  dni: number,
  outside: number,
  beam: Float64Array,
): void {
  if (dni <= 0) return;
  let sum = 0;
  for (let k = from; k < to; k++) {
    beam[k] = clearBeamShape(sun.up[k]);
    sum += beam[k];
  }
  const scale = (dni * sun.stepsPerHour) / sum;
  for (let k = from; k < to; k++) beam[k] = Math.min(beam[k] * scale, outside);
}

/** Shape of a clear sky's beam over the sine of the altitude; only ratios are used. */
function clearBeamShape(sinAltitude: number): number {
  return clearBeam[Math.min(Math.floor(sinAltitude * SHAPE_PARTS), SHAPE_PARTS - 1)];
}

// A table: the ratio inside an hour needs no more than this and the powers are slow.
const SHAPE_PARTS = 2048;
const clearBeam = Float64Array.from({ length: SHAPE_PARTS }, (_, i) => {
  const altitude = (Math.asin((i + 0.5) / SHAPE_PARTS) * 180) / Math.PI;
  return 0.7 ** (airMass(90 - altitude) ** 0.678);
});

/** Which positions lie behind the horizon profile; undefined for an open horizon. */
function hiddenSun(sun: SunYear, horizon: readonly HorizonPoint[]): Uint8Array | undefined {
  if (!horizon.some((p) => p.altitude > 0)) return undefined;
  const sinAt = Float64Array.from({ length: 361 }, (_, azimuth) =>
    Math.sin((horizonAltitude(horizon, azimuth) * Math.PI) / 180),
  );
  return Uint8Array.from(sun.up, (up, k) => {
    const azimuth = (Math.atan2(sun.east[k], sun.north[k]) * 180) / Math.PI;
    const whole = azimuth < 0 ? azimuth + 360 : azimuth;
    const i = Math.floor(whole);
    const edge = sinAt[i] + (sinAt[Math.min(i + 1, 360)] - sinAt[i]) * (whole - i);
    return up <= edge ? 1 : 0;
  });
}

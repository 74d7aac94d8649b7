import type { ScreenFactor } from '../blind/index.ts';
import { DAYS, HOURS } from '../time/index.ts';
import type { FacadeYear, SkyYear } from '../sky/index.ts';
import { diffuseInHour } from './diffuse.ts';
import type { BareGain } from './bareGain.ts';
import type { GlassLight } from './glassLight.ts';

/** Light and gain with the screen in its season and the blind raised. */
export interface ScreenedGain {
  /** Factor on direct light; one a position of the FacadeYear. */
  directFactor: Float64Array;
  /** Factor on diffuse light; HOURS values. */
  diffuseFactor: Float64Array;
  /** Gain, hourly mean W/m2 of glass; HOURS values. */
  gain: Float64Array;
}

/** No screen: the bare glass as it is. */
export function withoutScreen(facade: FacadeYear, bare: BareGain): ScreenedGain {
  return {
    directFactor: new Float64Array(facade.sz.length).fill(1),
    diffuseFactor: new Float64Array(HOURS).fill(1),
    gain: bare.gain,
  };
}

/** Days 0 to 364 from `from` to `to`, both included, over the turn of the year where `to` is first. */
export function daysInSeason(from: number, to: number): Uint8Array {
  return Uint8Array.from({ length: DAYS }, (_, day) =>
    from <= to ? Number(day >= from && day <= to) : Number(day >= from || day <= to),
  );
}

/**
 * Puts a screen before the glass on the days it hangs. Light scattered by the mesh is counted as
 * going on in its old direction, a small part of a fine mesh's transmittance.
 */
export function withScreen(
  facade: FacadeYear,
  sky: SkyYear,
  light: GlassLight,
  bare: BareGain,
  effect: ScreenFactor,
  season: Uint8Array,
  dayOfHour: (hour: number) => number,
): ScreenedGain {
  const { hourStart, sz } = facade;
  const directFactor = new Float64Array(sz.length).fill(1);
  const diffuseFactor = new Float64Array(HOURS).fill(1);
  const gain = Float64Array.from(bare.gain);
  const sinTilt = Math.sin((facade.tilt * Math.PI) / 180);
  const last = effect.beam.length - 1;

  for (let hour = 0; hour < HOURS; hour++) {
    if (!season[dayOfHour(hour)]) continue;
    diffuseFactor[hour] = effect.diffuse;
    let through = 0;
    for (let k = hourStart[hour]; k < hourStart[hour + 1]; k++) {
      directFactor[k] = effect.beam[Math.round(sz[k] * last)];
      through += light.direct[k] * directFactor[k] * bare.g[k];
    }
    gain[hour] =
      through / facade.stepsPerHour +
      effect.diffuse * diffuseInHour(bare.diffuse, sky, sinTilt, light.bounce, hour);
  }
  return { directFactor, diffuseFactor, gain };
}

import { lookup } from '../glazing/index.ts';
import type { GlassAngular } from '../glazing/index.ts';
import type { FacadeYear, SkyYear } from '../sky/index.ts';
import { HOURS } from '../time/index.ts';
import { bareDiffuseGain, diffuseInHour, plainDiffuseGain } from './diffuse.ts';
import type { DiffuseGain } from './diffuse.ts';
import type { GlassLight } from './glassLight.ts';

/** Gain of the bare glass, W/m2 of glass. */
export interface BareGain {
  /** g at the incidence angle of each position of the FacadeYear. */
  g: Float64Array;
  diffuse: DiffuseGain;
  /** Light that reaches the glass in its reveal, hourly mean; HOURS values. */
  sunlit: Float64Array;
  /** Solar gain with no blind and no screen, hourly mean; HOURS values. */
  gain: Float64Array;
}

export function bareGain(
  facade: FacadeYear,
  sky: SkyYear,
  light: GlassLight,
  glass: GlassAngular,
): BareGain {
  const { hourStart, sz } = facade;
  const g = new Float64Array(sz.length);
  for (let k = 0; k < sz.length; k++) g[k] = lookup(glass.g, sz[k]);

  const diffuse = bareDiffuseGain(light.view, glass);
  const plain = plainDiffuseGain(light.view);
  const sinTilt = Math.sin((facade.tilt * Math.PI) / 180);
  const sunlit = new Float64Array(HOURS);
  const gain = new Float64Array(HOURS);
  for (let hour = 0; hour < HOURS; hour++) {
    let onGlass = 0;
    let through = 0;
    for (let k = hourStart[hour]; k < hourStart[hour + 1]; k++) {
      onGlass += light.direct[k];
      through += light.direct[k] * g[k];
    }
    sunlit[hour] =
      onGlass / facade.stepsPerHour + diffuseInHour(plain, sky, sinTilt, light.bounce, hour);
    gain[hour] =
      through / facade.stepsPerHour + diffuseInHour(diffuse, sky, sinTilt, light.bounce, hour);
  }
  return { g, diffuse, sunlit, gain };
}

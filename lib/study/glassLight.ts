import type { DiffuseView, OpeningShade } from '../opening/index.ts';
import type { FacadeYear } from '../sky/index.ts';
import { HOURS } from '../time/index.ts';

/**
 * Light that reaches a glass in its reveal, mean over the glass. Positions are those of the
 * FacadeYear.
 */
export interface GlassLight {
  /** Beam and circumsolar light on the glass, W/m2; one a position. */
  direct: Float64Array;
  /**
   * Direct light that comes by way of the reveal faces, W/m2; HOURS values. Its share is that of the
   * hour's middle position: it is a few percent of the light and changes little within the hour.
   */
  bounce: Float64Array;
  view: DiffuseView;
}

/** Shades a facade's light by one opening. */
export function glassLight(facade: FacadeYear, shade: OpeningShade, view: DiffuseView): GlassLight {
  const { sx, sy, sz, direct: onPlane, hourStart } = facade;
  const direct = new Float64Array(onPlane.length);
  for (let k = 0; k < direct.length; k++) {
    direct[k] = onPlane[k] * shade.sunlit(sx[k], sy[k], sz[k]);
  }

  const bounce = new Float64Array(HOURS);
  for (let hour = 0; hour < HOURS; hour++) {
    const from = hourStart[hour];
    const to = hourStart[hour + 1];
    if (from === to) continue;
    let normal = 0;
    for (let k = from; k < to; k++) normal += onPlane[k] / sz[k];
    const middle = (from + to) >> 1;
    const share = shade.bounce(sx[middle], sy[middle], sz[middle]);
    bounce[hour] = (normal * share) / facade.stepsPerHour;
  }
  return { direct, bounce, view };
}

/**
 * The part of the direct light that falls on the top `share` of the glass, where a part-lowered
 * blind hangs; mean over the whole glass, W/m2, one a position.
 */
export function topLight(facade: FacadeYear, shade: OpeningShade, share: number): Float64Array {
  const { sx, sy, sz, direct } = facade;
  const top = new Float64Array(direct.length);
  for (let k = 0; k < top.length; k++) {
    top[k] = direct[k] * shade.sunlitTop(share, sx[k], sy[k], sz[k]);
  }
  return top;
}

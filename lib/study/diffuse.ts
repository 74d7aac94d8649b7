import { lookup } from '../glazing/index.ts';
import type { GlassAngular } from '../glazing/index.ts';
import type { DiffuseView, DirectionSet } from '../opening/index.ts';
import type { SkyYear } from '../sky/index.ts';

/** Gain of a glass (with or without a blind) for one unit of each kind of diffuse light. */
export interface DiffuseGain {
  /** For an even sky of radiosity 1. */
  sky: number;
  /** For a ground of radiosity 1. */
  ground: number;
  /** For a horizon band that gives an open vertical plane 1. */
  horizon: number;
  /** For scattered light of irradiance 1 on the glass. */
  scattered: number;
}

/** Diffuse gain of something whose gain by direction is `over` and for scattered light `scattered`. */
export function diffuseGainOf(
  view: DiffuseView,
  scattered: number,
  over: (set: DirectionSet) => number,
): DiffuseGain {
  return {
    sky: over(view.sky) + view.bounceSky * scattered,
    ground: over(view.ground) + view.bounceGround * scattered,
    horizon: over(view.horizon),
    scattered,
  };
}

/** Diffuse gain of bare glass. */
export function bareDiffuseGain(view: DiffuseView, glass: GlassAngular): DiffuseGain {
  return diffuseGainOf(view, glass.gDiffuse, (set) => {
    let sum = 0;
    for (let i = 0; i < set.weight.length; i++) {
      sum += set.weight[i] * lookup(glass.g, set.cosIncidence[i]);
    }
    return sum;
  });
}

/** Diffuse light on the glass itself, with nothing lost in it. */
export function plainDiffuseGain(view: DiffuseView): DiffuseGain {
  return diffuseGainOf(view, 1, (set) => set.weight.reduce((sum, w) => sum + w, 0));
}

/** Diffuse gain in one hour, W/m2 of glass; a dark horizon cannot take it below zero. */
export function diffuseInHour(
  gain: DiffuseGain,
  sky: SkyYear,
  sinTilt: number,
  bounce: Float64Array,
  hour: number,
): number {
  const sum =
    sky.isotropic[hour] * gain.sky +
    sky.ground[hour] * gain.ground +
    sky.horizonBand[hour] * sinTilt * gain.horizon +
    bounce[hour] * gain.scattered;
  return sum > 0 ? sum : 0;
}

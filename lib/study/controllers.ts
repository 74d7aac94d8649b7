import { STEPS } from '../time/index.ts';
import type { FacadeYear } from '../sky/index.ts';

/** What a controller's sensors read, one value a step of the year. */
export interface FacadeSensors {
  irradiance: Float64Array;
  sunny: Uint8Array;
}

/** Sensors of one facade as they are, or the strongest reading of several. */
export function sensorsOf(facades: readonly FacadeYear[]): FacadeSensors {
  if (facades.length === 1) return facades[0];
  const irradiance = new Float64Array(STEPS);
  const sunny = new Uint8Array(STEPS);
  for (const facade of facades) {
    for (let step = 0; step < STEPS; step++) {
      if (facade.irradiance[step] > irradiance[step]) irradiance[step] = facade.irradiance[step];
      sunny[step] |= facade.sunny[step];
    }
  }
  return { irradiance, sunny };
}

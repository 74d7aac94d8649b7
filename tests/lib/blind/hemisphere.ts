import { diffuseGain } from '../../../lib/blind/index.ts';
import type { TotalGain } from '../../../lib/blind/index.ts';
import type { GlassAngular } from '../../../lib/glazing/index.ts';
import type { DirectionSet } from '../../../lib/opening/index.ts';

/** Directions of an even hemisphere before a wall on a regular grid; weights add up to 1. */
function evenHemisphere(): DirectionSet {
  const rows = 90;
  const columns = 45;
  const set: DirectionSet = {
    cosIncidence: new Float64Array(rows * columns),
    profileAngle: new Float64Array(rows * columns),
    weight: new Float64Array(rows * columns),
  };
  let total = 0;
  for (let i = 0; i < rows * columns; i++) {
    const p = ((Math.floor(i / columns) + 0.5) / rows - 0.5) * Math.PI;
    const b = (((i % columns) + 0.5) / columns - 0.5) * Math.PI;
    set.cosIncidence[i] = Math.cos(p) * Math.cos(b);
    set.profileAngle[i] = (p * 180) / Math.PI;
    set.weight[i] = Math.cos(p) * Math.cos(b) ** 2;
    total += set.weight[i];
  }
  for (let i = 0; i < rows * columns; i++) set.weight[i] /= total;
  return set;
}

const directions = evenHemisphere();

/** Gain through glass and blind per unit of light spread evenly over the hemisphere. */
export const gatherHemisphere = (total: TotalGain, glass: GlassAngular): number =>
  diffuseGain(total, glass, directions);

import {
  AIR,
  AIR_HEAT,
  INPUTS,
  INTERNAL,
  OUTDOOR,
  OUTPUTS,
  RADIANT,
  SUN,
  type Modes,
} from './network.ts';

/**
 * A room's answer to one hour of steady inputs. For each kept mode x and its input f = drive u:
 * mean over the hour = meanKeep x + meanGain f, end of the hour = keep x + endGain f. Outputs are
 * hourly means: read (mean x) + feed u.
 */
export interface HourResponse {
  count: number;
  keep: Float64Array;
  endGain: Float64Array;
  meanKeep: Float64Array;
  meanGain: Float64Array;
  /** 1/h */
  rate: Float64Array;
  /** count x INPUTS */
  drive: Float64Array;
  /** OUTPUTS x count */
  read: Float64Array;
  /** OUTPUTS x INPUTS */
  feed: Float64Array;
  /** Heat stored per unit of each mode, Wh. */
  heat: Float64Array;
}

/** Size of each input that decides which modes matter, for a floor of 40 m2. */
const TYPICAL = (() => {
  const size = new Float64Array(INPUTS);
  size[AIR_HEAT] = 1000;
  size[SUN] = 1500;
  size[INTERNAL] = 300;
  size[OUTDOOR] = 10;
  return size;
})();

/**
 * Steps the modes exactly through hours of steady inputs. Modes that would move the first hour's
 * mean air and radiant temperature by less than `tolerance` (K) after a step of a usual size follow
 * at once instead: their steady part is kept, so steady states and the heat balance stay exact.
 */
export function exactHours(modes: Modes, floorArea: number, tolerance: number): HourResponse {
  const { count, rate } = modes;
  const kept: number[] = [];
  for (let k = 0; k < count; k++) {
    if (k === 0 || lag(modes, k, floorArea / 40) > tolerance) kept.push(k);
  }
  const keep = kept.map((k) => Math.exp(-rate[k]));
  const meanKeep = kept.map((k) => meanOfDecay(rate[k]));
  const meanGain = kept.map((k) => meanOfRise(rate[k]));
  return assemble(modes, kept, { keep, endGain: meanKeep, meanKeep, meanGain });
}

/** Steps the modes by Crank and Nicolson's rule with the mean of both ends, as EN ISO 13790 does. */
export function crankNicolsonHours(modes: Modes): HourResponse {
  const kept = Array.from(modes.rate, (_, k) => k);
  const keep = kept.map((k) => (1 - modes.rate[k] / 2) / (1 + modes.rate[k] / 2));
  const endGain = kept.map((k) => 1 / (1 + modes.rate[k] / 2));
  const meanKeep = keep.map((a) => (1 + a) / 2);
  const meanGain = endGain.map((g) => g / 2);
  return assemble(modes, kept, { keep, endGain, meanKeep, meanGain });
}

/** Error of the first hour's mean when mode k follows a step at once, K. */
function lag(modes: Modes, k: number, scale: number): number {
  let worst = 0;
  for (const o of [AIR, RADIANT]) {
    for (let u = 0; u < INPUTS; u++) {
      const size = u === OUTDOOR ? TYPICAL[u] : TYPICAL[u] * scale;
      const steady =
        (modes.read[o * modes.count + k] * modes.drive[k * INPUTS + u]) / modes.rate[k];
      worst = Math.max(worst, Math.abs(steady * size) * meanOfDecay(modes.rate[k]));
    }
  }
  return worst;
}

/** Mean of exp(-rate t) over the hour. */
function meanOfDecay(rate: number): number {
  return rate < 1e-12 ? 1 : -Math.expm1(-rate) / rate;
}

/** Mean over the hour of the rise under a steady input of 1, with rate: (1 - meanOfDecay) / rate. */
function meanOfRise(rate: number): number {
  return rate < 1e-4 ? 0.5 - rate / 6 : (1 - meanOfDecay(rate)) / rate;
}

interface Factors {
  keep: number[];
  endGain: number[];
  meanKeep: number[];
  meanGain: number[];
}

function assemble(modes: Modes, kept: number[], factors: Factors): HourResponse {
  const n = kept.length;
  const feed = modes.feed.slice();
  for (let k = 0; k < modes.count; k++) {
    if (kept.includes(k)) continue;
    for (let o = 0; o < OUTPUTS; o++) {
      const c = modes.read[o * modes.count + k] / modes.rate[k];
      for (let u = 0; u < INPUTS; u++) feed[o * INPUTS + u] += c * modes.drive[k * INPUTS + u];
    }
  }
  const drive = new Float64Array(n * INPUTS);
  const read = new Float64Array(OUTPUTS * n);
  kept.forEach((k, i) => {
    for (let u = 0; u < INPUTS; u++) drive[i * INPUTS + u] = modes.drive[k * INPUTS + u];
    for (let o = 0; o < OUTPUTS; o++) read[o * n + i] = modes.read[o * modes.count + k];
  });
  return {
    count: n,
    keep: Float64Array.from(factors.keep),
    endGain: Float64Array.from(factors.endGain),
    meanKeep: Float64Array.from(factors.meanKeep),
    meanGain: Float64Array.from(factors.meanGain),
    rate: Float64Array.from(kept, (k) => modes.rate[k]),
    drive,
    read,
    feed,
    heat: Float64Array.from(kept, (k) => modes.heat[k]),
  };
}

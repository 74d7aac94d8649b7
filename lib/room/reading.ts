import type { HourResponse } from './hourly.ts';
import { INPUTS } from './network.ts';

/** One output as a row: its hourly mean is memory x (modes as the hour begins) + inputs x their part. */
export interface Reading {
  memory: Float64Array;
  /** What one unit of each input all hour adds; INPUTS values. */
  part: Float64Array;
}

/** Outputs added up with their weights. */
export function reading(r: HourResponse, ...outputs: [output: number, weight: number][]): Reading {
  const n = r.count;
  const read = new Float64Array(n);
  const part = new Float64Array(INPUTS);
  for (const [o, weight] of outputs) {
    for (let k = 0; k < n; k++) read[k] += weight * r.read[o * n + k];
    for (let u = 0; u < INPUTS; u++) part[u] += weight * r.feed[o * INPUTS + u];
  }
  for (let k = 0; k < n; k++) {
    for (let u = 0; u < INPUTS; u++) part[u] += read[k] * r.meanGain[k] * r.drive[k * INPUTS + u];
  }
  return { memory: read.map((c, k) => c * r.meanKeep[k]), part };
}

/** What one unit of an input all hour adds to each mode by the hour's end. */
export function endOf(r: HourResponse, input: number): Float64Array {
  return r.endGain.map((gain, k) => gain * r.drive[k * INPUTS + input]);
}

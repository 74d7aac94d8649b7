import type { HourResponse } from './hourly.ts';
import { AIR_HEAT, CONSTANT, INPUTS, INTERNAL, OPAQUE_SUN, OUTDOOR, SUN } from './network.ts';

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

/** What the inputs of an hour add to an output, heat to the air left out. */
export function inputsPart(
  { part }: Reading,
  sun: number,
  internal: number,
  outdoor: number,
  opaqueSun: number,
): number {
  return (
    part[SUN] * sun +
    part[INTERNAL] * internal +
    part[OUTDOOR] * outdoor +
    part[OPAQUE_SUN] * opaqueSun +
    part[CONSTANT]
  );
}

/** Rise of an output for a watt given to the air all hour, K/W. */
export function perAirWatt({ part }: Reading): number {
  return part[AIR_HEAT];
}

/** What one unit of an input all hour adds to each mode by the hour's end. */
export function endOf(r: HourResponse, input: number): Float64Array {
  return r.endGain.map((gain, k) => gain * r.drive[k * INPUTS + input]);
}

import { HOURS, STEPS, STEPS_PER_HOUR } from '../time/index.ts';
import type { CompiledRule } from './compile.ts';
import type { Trigger } from './types.ts';

/** What a blind's sensors read. */
export interface Sensors {
  /** 1 while the sun is on the facade; STEPS values. */
  sunOnFacade: Uint8Array;
  /** Global irradiance on the facade, W/m2; STEPS values. */
  facadeIrradiance: Float64Array;
  /** Outdoor temperature, C; HOURS values. */
  outdoor: Float64Array;
  /** Wind at the facade, m/s; HOURS values. */
  wind: Float64Array;
}

/** Whether a latched trigger holds after reading `value`. */
export function latch(trigger: Trigger, above: boolean, held: boolean, value: number): boolean {
  if (above) return held ? value > trigger.release : value >= trigger.at;
  return held ? value < trigger.release : value <= trigger.at;
}

/**
 * 1 where a trigger holds, one value for each reading. The year is a loop: the latch is first run
 * through it once, so that it begins as it ends.
 */
function latched(trigger: Trigger, above: boolean, readings: Float64Array): Uint8Array {
  const holds = new Uint8Array(readings.length);
  const sign = above ? 1 : -1;
  const at = sign * trigger.at;
  const release = sign * trigger.release;
  let held = endsHeld(at, release, sign, readings) ? 1 : 0;
  for (let i = 0; i < readings.length; i++) {
    const value = sign * readings[i];
    held = held ? Number(value > release) : Number(value >= at);
    holds[i] = held;
  }
  return holds;
}

/** Whether the latch is set after the year's last reading: the last reading beyond a bound tells. */
function endsHeld(at: number, release: number, sign: number, readings: Float64Array): boolean {
  for (let i = readings.length - 1; i >= 0; i--) {
    const value = sign * readings[i];
    if (value >= at && value > release) return true;
    if (value <= release) return false;
  }
  return false;
}

/**
 * 1 at the steps where all of a rule's conditions hold, those on the room left out; STEPS values.
 */
export function ruleHolds(rule: CompiledRule, sensors: Sensors): Uint8Array {
  const { when, allowed } = rule;
  const holds = allowed.slice();
  if (when.sunOnFacade !== undefined) {
    const flip = when.sunOnFacade ? 0 : 1;
    for (let i = 0; i < STEPS; i++) holds[i] &= sensors.sunOnFacade[i] ^ flip;
  }
  const { facadeIrradiance, outdoor } = sensors;
  if (when.irradianceAbove) and(holds, latched(when.irradianceAbove, true, facadeIrradiance));
  if (when.irradianceBelow) and(holds, latched(when.irradianceBelow, false, facadeIrradiance));
  if (when.outdoorAbove) andHours(holds, latched(when.outdoorAbove, true, outdoor));
  if (when.outdoorBelow) andHours(holds, latched(when.outdoorBelow, false, outdoor));
  return holds;
}

function and(holds: Uint8Array, other: Uint8Array): void {
  for (let i = 0; i < STEPS; i++) holds[i] &= other[i];
}

function andHours(holds: Uint8Array, hourly: Uint8Array): void {
  for (let hour = 0; hour < HOURS; hour++) {
    if (hourly[hour] === 0) holds.fill(0, hour * STEPS_PER_HOUR, (hour + 1) * STEPS_PER_HOUR);
  }
}

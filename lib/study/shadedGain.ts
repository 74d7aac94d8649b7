import { COS_INTERVALS } from '../glazing/index.ts';
import type { TotalGain } from '../blind/index.ts';
import type { FacadeYear, SkyYear } from '../sky/index.ts';
import { HOURS, STEPS_PER_HOUR } from '../time/index.ts';
import type { BareGain } from './bareGain.ts';
import { diffuseInHour } from './diffuse.ts';
import type { DiffuseGain } from './diffuse.ts';
import type { GlassLight } from './glassLight.ts';
import type { ScreenedGain } from './screen.ts';

/** Diffuse gain of glass and blind: one value, or one for each profile angle where slats track. */
export interface BlindDiffuse {
  fixed?: DiffuseGain;
  /** 181 values each, by profile angle -90 to 90. */
  tracked?: { [part in keyof DiffuseGain]: Float64Array };
}

/** What one action of a schedule does at one opening. */
export interface BlindPose {
  /** Part of the glass height covered, 0 to 1. */
  share: number;
  /** Direct light under a part-lowered blind (topLight); absent where `share` is 1. */
  top?: Float64Array;
  total: TotalGain;
  diffuse: BlindDiffuse;
}

/** All that is needed to turn blind positions into gain, hour by hour. */
export interface ShadedGainInput {
  facade: FacadeYear;
  sky: SkyYear;
  light: GlassLight;
  bare: BareGain;
  screened: ScreenedGain;
  /** Profile angle plus 90 at each position of the FacadeYear, 0 to 180. */
  profile: Float64Array;
  /** By action number; undefined stands for raised. */
  poses: readonly (BlindPose | undefined)[];
}

/** Gain with shading in one hour, W/m2 of glass, for the blind's action at each step of the year. */
export type HourGain = (hour: number, state: Uint8Array) => number;

const FLAT = 90; // table index of profile angle 0: where tracking slats rest with no sun before them

/**
 * Prepares the gain of one opening for its blind's positions. Hours in which the blind stands still
 * are kept, as the runs of other schedules meet most of them again.
 */
export function shadedHourGain(input: ShadedGainInput): HourGain {
  const move = movingHourGain(input);
  const { gain: raised } = input.screened;
  /** By action number; NaN where not asked for yet. */
  const still: Float64Array[] = [];

  return (hour, state) => {
    const first = hour * STEPS_PER_HOUR;
    const action = state[first];
    const stands =
      action === state[first + 1] && action === state[first + 2] && action === state[first + 3];
    if (!stands) return move(hour, state);
    if (action === 0) return raised[hour];
    const kept = (still[action] ??= new Float64Array(HOURS).fill(NaN));
    // NaN alone is not itself.
    if (kept[hour] !== kept[hour]) kept[hour] = move(hour, state);
    return kept[hour];
  };
}

function movingHourGain(input: ShadedGainInput): HourGain {
  const { facade, sky, light, bare, screened, profile, poses } = input;
  const { hourStart, step: stepOf, sz } = facade;
  const sinTilt = Math.sin((facade.tilt * Math.PI) / 180);

  return (hour, state) => {
    const first = hour * STEPS_PER_HOUR;
    let k = hourStart[hour];
    const end = hourStart[hour + 1];
    if (k === end && sky.isotropic[hour] === 0 && sky.ground[hour] === 0) return 0;

    const open = diffuseInHour(bare.diffuse, sky, sinTilt, light.bounce, hour);
    let sum = 0;
    for (let step = first; step < first + STEPS_PER_HOUR; step++) {
      const lit = k < end && stepOf[k] === step;
      const pose = poses[state[step]];
      if (!pose) {
        sum += screened.diffuseFactor[hour] * open;
        if (lit) sum += light.direct[k] * screened.directFactor[k] * bare.g[k];
      } else {
        const at = lit ? profile[k] : FLAT;
        const covered = posedDiffuse(pose.diffuse, at, sky, sinTilt, light.bounce, hour);
        const diffuse = pose.share * covered + (1 - pose.share) * open;
        sum += screened.diffuseFactor[hour] * diffuse;
        if (lit && light.direct[k] > 0) {
          const under = pose.top ? pose.top[k] : light.direct[k];
          const index = pose.total.basis === 'profile' ? at : sz[k] * COS_INTERVALS;
          const through =
            under * totalGainAt(pose.total, index, bare.g[k]) +
            (light.direct[k] - under) * bare.g[k];
          sum += screened.directFactor[k] * through;
        }
      }
      if (lit) k++;
    }
    return sum / STEPS_PER_HOUR;
  };
}

function totalGainAt(total: TotalGain, index: number, g: number): number {
  const { c0, c1, c2 } = total;
  const i = Math.min(index | 0, c0.length - 2);
  const t = index - i;
  const k0 = c0[i] + (c0[i + 1] - c0[i]) * t;
  const k1 = c1[i] + (c1[i + 1] - c1[i]) * t;
  const k2 = c2[i] + (c2[i + 1] - c2[i]) * t;
  return k0 + g * (k1 + g * k2);
}

const scratch: DiffuseGain = { sky: 0, ground: 0, horizon: 0, scattered: 0 };

function posedDiffuse(
  diffuse: BlindDiffuse,
  profile: number,
  sky: SkyYear,
  sinTilt: number,
  bounce: Float64Array,
  hour: number,
): number {
  if (diffuse.fixed) return diffuseInHour(diffuse.fixed, sky, sinTilt, bounce, hour);
  const { tracked } = diffuse;
  const i = Math.round(profile);
  scratch.sky = tracked!.sky[i];
  scratch.ground = tracked!.ground[i];
  scratch.horizon = tracked!.horizon[i];
  scratch.scattered = tracked!.scattered[i];
  return diffuseInHour(scratch, sky, sinTilt, bounce, hour);
}

/** The whole year's gain with shading, W/m2 of glass; HOURS values. */
export function shadedYear(hourGain: HourGain, state: Uint8Array): Float64Array {
  const gain = new Float64Array(HOURS);
  for (let hour = 0; hour < HOURS; hour++) gain[hour] = hourGain(hour, state);
  return gain;
}

/** Profile angle plus 90 at each position of a FacadeYear. */
export function profileIndex(facade: FacadeYear): Float64Array {
  const { sy, sz } = facade;
  const index = new Float64Array(sy.length);
  for (let k = 0; k < sy.length; k++) {
    index[k] = 90 + (Math.atan2(sy[k], sz[k]) * 180) / Math.PI;
  }
  return index;
}

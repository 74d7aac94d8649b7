import { blindOptics, diffuseGain, totalGain, trackedDiffuseGain } from '../blind/index.ts';
import type { Blind, BlindSetting } from '../blind/index.ts';
import type { GlassAngular } from '../glazing/index.ts';
import type { DiffuseView } from '../opening/index.ts';
import type { RuleAction } from '../schedule/index.ts';
import { diffuseGainOf } from './diffuse.ts';
import type { BlindPose } from './shadedGain.ts';
import type { BlindInPlace } from './types.ts';

/** How an action sets a blind: slats at an angle or tracking, a fabric or shutter simply down. */
export function settingOf(action: RuleAction, use: BlindInPlace): BlindSetting | undefined {
  if (action.kind === 'raise') return undefined;
  if (use.blind.kind !== 'slats') return { kind: 'down' };
  if (action.kind === 'track') return { kind: 'track' };
  const { angleMin, angleMax } = use.blind;
  const angle = action.kind === 'tilt' ? action.angle : use.standingAngle;
  return { kind: 'tilt', angle: Math.min(Math.max(angle, angleMin), angleMax) };
}

/** Part of the glass height an action covers, 0 to 1. */
export function shareOf(action: RuleAction): number {
  return action.kind === 'raise' ? 0 : (action.share ?? 1);
}

/**
 * Gain of glass and lowered blind for direct and diffuse light. Light that the reveal has scattered
 * is taken as evenly as a view of the whole sky and ground would be.
 */
export function blindPose(
  blind: Blind,
  setting: BlindSetting,
  glass: GlassAngular,
  view: DiffuseView,
): Omit<BlindPose, 'share' | 'top'> {
  const total = totalGain(blind, blindOptics(blind, setting), glass);
  const even = evenDirections(view);
  if (setting.kind !== 'track') {
    const scattered = diffuseGain(total, glass, even);
    const fixed = diffuseGainOf(view, scattered, (set) => diffuseGain(total, glass, set));
    return { total, diffuse: { fixed } };
  }
  const scattered = trackedDiffuseGain(blind, glass, even);
  const sky = trackedDiffuseGain(blind, glass, view.sky);
  const ground = trackedDiffuseGain(blind, glass, view.ground);
  const horizon = trackedDiffuseGain(blind, glass, view.horizon);
  return {
    total,
    diffuse: {
      tracked: {
        sky: sky.map((gain, j) => gain + view.bounceSky * scattered[j]),
        ground: ground.map((gain, j) => gain + view.bounceGround * scattered[j]),
        horizon,
        scattered,
      },
    },
  };
}

/** Sky and ground of a view as one set whose weights add up to 1. */
function evenDirections({ sky, ground }: DiffuseView): DiffuseView['sky'] {
  const joined = (a: Float64Array, b: Float64Array) => Float64Array.from([...a, ...b]);
  const weight = joined(sky.weight, ground.weight);
  const sum = weight.reduce((total, w) => total + w, 0);
  return {
    cosIncidence: joined(sky.cosIncidence, ground.cosIncidence),
    profileAngle: joined(sky.profileAngle, ground.profileAngle),
    weight: sum > 0 ? weight.map((w) => w / sum) : weight,
  };
}

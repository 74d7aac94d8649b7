export { PROFILE_COUNT } from './types.ts';
export type {
  Blind,
  BlindOptics,
  BlindPosition,
  BlindSetting,
  FabricBlind,
  ShutterBlind,
  SlatBlind,
  TotalGain,
} from './types.ts';
export { cutOffAngle, STANDING_ANGLE, TRACK_MARGIN, trackingAngle } from './louvre.ts';
export { blindOptics, profileOfIndex, slatOptics, viewThrough } from './optics.ts';
export type { LightSplit } from './radiosity.ts';
export { diffuseOptics } from './diffuse.ts';
export type { DiffuseOptics } from './diffuse.ts';
export { totalGain } from './total.ts';
export { diffuseGain, directionalGain, trackedDiffuseGain } from './gain.ts';
export { insectScreenFactor, screenAirFlowFactor } from './screen.ts';
export type { ScreenFactor } from './screen.ts';
export { validateBlind } from './validate.ts';
export {
  blindCautions,
  CAUTIONS,
  cautionsOf,
  ESCAPE_CAUTION,
  HEAT_TRAP_CAUTION,
  HEIGHT_CAUTION,
  WIND_CAUTION,
} from './cautions.ts';
export type { BlindCaution } from './cautions.ts';

import type { SlatBlind } from './types.ts';

/** Drives stop and light runs along the plane at 90 degrees; both are taken as 89.9. */
const STEEPEST = 89.9;
const RAD = Math.PI / 180;

/** Common practice: slats that follow the sun close this many degrees past the cut-off. */
export const TRACK_MARGIN = 5;

/** Common practice: slats lowered without an angle of their own stand at 45 degrees. */
export const STANDING_ANGLE = 45;

/** An angle kept within 89.9 degrees either side of flat. */
export const keepOpen = (angle: number): number => Math.max(-STEEPEST, Math.min(STEEPEST, angle));

/** A slat angle kept within what the drive can reach, degrees. */
export const reachable = (blind: SlatBlind, angle: number): number =>
  Math.max(blind.angleMin, Math.min(blind.angleMax, angle));

/** The angle nearest to flat that the drive can reach, degrees. */
export const flattest = (blind: SlatBlind): number => reachable(blind, 0);

/** Tangent of a profile angle, degrees, kept finite at 90. */
export const profileTangent = (angle: number): number => Math.tan(keepOpen(angle) * RAD);

/** Least slat angle at which the shadows of neighbours meet, degrees; not limited by the drive. */
function meetingAngle(blind: SlatBlind, profileAngle: number): number {
  const sine = (blind.slatSpacing / blind.slatWidth) * Math.cos(profileAngle * RAD);
  return (sine < 1 ? Math.asin(sine) / RAD : 90) - profileAngle;
}

/**
 * The flattest slat angle that stops direct light, degrees, within the drive's range: shadows of
 * neighbouring slats meet where w sin(angle + p) = s cos p. Where no angle in the range stops it
 * all, the end of the range that lets least through; with the sun level or below (p <= 0), or none
 * in front, the flattest angle.
 * @param profileAngle degrees, positive from above
 */
export function cutOffAngle(blind: SlatBlind, profileAngle: number): number {
  return closePast(blind, profileAngle, 0);
}

/**
 * Where slats that follow the sun stand, whole degrees unless the drive ends between: the cut-off
 * angle closed by a margin (common practice) for the drive's play and for curved slats, never past
 * the drive's range.
 * @param margin degrees
 */
export function trackingAngle(
  blind: SlatBlind,
  profileAngle: number,
  margin = TRACK_MARGIN,
): number {
  // A drive is no finer than a degree; rounding up keeps direct light out.
  return reachable(blind, Math.ceil(closePast(blind, profileAngle, margin) - 1e-9));
}

function closePast(blind: SlatBlind, profileAngle: number, margin: number): number {
  const flat = flattest(blind);
  if (!(profileAngle > 0)) return flat;
  return reachable(blind, Math.max(flat, meetingAngle(blind, profileAngle) + margin));
}

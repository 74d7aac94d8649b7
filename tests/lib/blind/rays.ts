import type { SlatBlind } from '../../../lib/blind/index.ts';
import type { LightSplit } from '../../../lib/blind/index.ts';

/**
 * Ray casting through a stack of slats, written apart from the library: real slats as segments in
 * the section (z out, y up), as many of them as a ray could reach, no view factors and no strips.
 */
interface Stack {
  /** Outer edge of slat 0; its inner edge is the origin. */
  z: number;
  y: number;
  spacing: number;
  /** Slats to look at either side of the ray's place. */
  near: number;
}

const RAD = Math.PI / 180;

function stackOf(blind: SlatBlind, angle: number): Stack {
  return {
    z: blind.slatWidth * Math.cos(angle * RAD),
    y: -blind.slatWidth * Math.sin(angle * RAD),
    spacing: blind.slatSpacing,
    near: Math.ceil(blind.slatWidth / blind.slatSpacing) + 2,
  };
}

/** Distance along the ray to the next slat, Infinity where it leaves without meeting one. */
function nextHit(s: Stack, z: number, y: number, dz: number, dy: number): number {
  const across = dz * s.y - dy * s.z;
  if (Math.abs(across) < 1e-14) return Infinity;
  const around = Math.round(y / s.spacing);
  let nearest = Infinity;
  for (let k = around - s.near; k <= around + s.near; k++) {
    const height = k * s.spacing - y;
    const t = (-z * s.y - height * s.z) / across;
    const u = (-z * dy - height * dz) / across;
    if (t > 1e-9 && u >= 0 && u <= 1 && t < nearest) nearest = t;
  }
  return nearest;
}

/** Share of evenly spaced rays from one profile angle that pass without meeting a slat. */
export function straightShare(
  blind: SlatBlind,
  angle: number,
  profileAngle: number,
  rays: number,
): number {
  const s = stackOf(blind, angle);
  const dz = -Math.cos(profileAngle * RAD);
  const dy = -Math.sin(profileAngle * RAD);
  let through = 0;
  for (let i = 0; i < rays; i++) {
    const y = s.y + ((i + 0.5) / rays) * s.spacing;
    if (nextHit(s, s.z + 1e-7, y, dz, dy) === Infinity) through++;
  }
  return through / rays;
}

/** Follows rays from one profile angle until they leave or are absorbed. */
export function traceSlats(
  blind: SlatBlind,
  angle: number,
  profileAngle: number,
  rays: number,
  random: () => number,
): LightSplit {
  const s = stackOf(blind, angle);
  const normal = { z: Math.sin(angle * RAD), y: Math.cos(angle * RAD) };
  const count = { tauDirect: 0, tauDiffuse: 0, rho: 0, alpha: 0 };
  for (let i = 0; i < rays; i++) {
    let z = s.z + 1e-7;
    let y = s.y + random() * s.spacing;
    let dz = -Math.cos(profileAngle * RAD);
    let dy = -Math.sin(profileAngle * RAD);
    for (let scattered = false; ; scattered = true) {
      const t = nextHit(s, z, y, dz, dy);
      if (t === Infinity) {
        count[dz > 0 ? 'rho' : scattered ? 'tauDiffuse' : 'tauDirect']++;
        break;
      }
      const fromAbove = dz * normal.z + dy * normal.y < 0;
      const reflectance = fromAbove ? blind.reflectanceUpper : blind.reflectanceLower;
      const fate = random();
      if (fate >= reflectance + blind.slatTransmittance) {
        count.alpha++;
        break;
      }
      z += t * dz;
      y += t * dy;
      // Even scattering in space, seen in the section: the sine of the angle is spread evenly.
      const side = fate < reflectance === fromAbove ? 1 : -1;
      const sine = 2 * random() - 1;
      const cosine = Math.sqrt(1 - sine * sine) * side;
      dz = cosine * normal.z + sine * normal.y;
      dy = cosine * normal.y - sine * normal.z;
    }
  }
  return {
    tauDirect: count.tauDirect / rays,
    tauDiffuse: count.tauDiffuse / rays,
    rho: count.rho / rays,
    alpha: count.alpha / rays,
  };
}

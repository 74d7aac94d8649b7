import { InputError, problem } from '../problem/index.ts';
import { horizonAltitude } from '../sky/index.ts';
import type { HorizonPoint } from '../sky/index.ts';
import { planeAxes } from '../sun/index.ts';
import type { PlaneAxes } from '../sun/index.ts';
import { horizonPieces, patches } from './directions.ts';
import type { Patch } from './directions.ts';
import { compileOpening } from './openingShade.ts';
import type { DiffuseView, DirectionSet, OpeningGeometry, OpeningShade, Plane } from './types.ts';
import { say } from './say.ts';

const RAD = Math.PI / 180;

/**
 * Height of the bright band over the horizon, degrees: the 6.5 of Perez, Seals, Ineichen, Stewart &
 * Menicucci (1987), Solar Energy 39(3), whose later model draws the band together into a line (from
 * memory).
 */
const BAND = 6.5;

/** Places in a patch where the horizon profile is looked up, across and up. */
const ACROSS = 2;
const UP = 6;

/**
 * What the glass sees of an even sky and ground, averaged over its area: Gauss-Legendre points over
 * the hemisphere (`patches`), each with the share of the glass that the shades leave open to it.
 * Against a fine midpoint rule view factors are off by 0.001 (root mean square), 0.004 at worst.
 *
 * A horizon profile takes away the sky below it; what stands there counts as dark. Of the band of
 * brightening along the horizon it takes away the share of the band's height it covers.
 *
 * The bounces are the light that a sky (or ground) of radiosity 1, all round, sends to the glass by
 * one diffuse reflection in the reveal: the direct bounce of each direction, added up.
 *
 * @throws InputError for an impossible opening or plane
 */
export function diffuseView(
  geometry: OpeningGeometry,
  plane: Plane,
  horizon: readonly HorizonPoint[] = [],
): DiffuseView {
  checkPlane(plane);
  const shade = compileOpening(geometry);
  const skyline = horizonTable(horizon);
  const axes = planeAxes(plane.azimuth, plane.tilt);
  const skyPatches = patches('sky', plane.tilt);
  const openSky = skyline && openShares(horizon, plane, axes, skyline, skyPatches);
  const sky = halfView(shade, skyPatches, openSky);
  const ground = halfView(shade, patches('ground', plane.tilt));
  return {
    sky: sky.set,
    ground: ground.set,
    horizon: horizonView(shade, plane, axes, skyline),
    bounceSky: sky.bounce,
    bounceGround: ground.bounce,
  };
}

function halfView(
  shade: OpeningShade,
  list: readonly Patch[],
  open?: Float64Array,
): { set: DirectionSet; bounce: number } {
  const set = directionSet(list.length);
  let bounce = 0;
  list.forEach((patch, i) => {
    const across = Math.sin(patch.theta);
    const sx = Math.cos(patch.theta);
    const sy = across * Math.sin(patch.profile);
    const sz = across * Math.cos(patch.profile);
    const weight = open ? patch.weight * open[i] : patch.weight;
    set.cosIncidence[i] = sz;
    set.profileAngle[i] = patch.profile / RAD;
    set.weight[i] = weight * shade.sunlit(sx, sy, sz);
    // weight / sz is the patch's solid angle over pi, which is its normal irradiance.
    if (weight > 0) bounce += (weight / sz) * shade.bounce(sx, sy, sz);
  });
  return { set, bounce };
}

function horizonView(
  shade: OpeningShade,
  plane: Plane,
  axes: PlaneAxes,
  skyline?: Float64Array,
): DirectionSet {
  const pieces = horizonPieces();
  const set = directionSet(pieces.length);
  const profile = (plane.tilt - 90) * RAD;
  pieces.forEach(({ theta, theta0, theta1, weight }, i) => {
    const across = Math.sin(theta);
    const sx = Math.cos(theta);
    const sy = across * Math.sin(profile);
    const sz = across * Math.cos(profile);
    let open = 1;
    if (skyline) {
      open = 0;
      for (let k = 0; k < UP; k++) {
        const at = theta0 + ((k + 0.5) / UP) * (theta1 - theta0);
        const altitude = skylineAt(skyline, worldDirection(axes, at, profile));
        open += Math.max(0, 1 - altitude / BAND) / UP;
      }
    }
    set.cosIncidence[i] = sz;
    set.profileAngle[i] = plane.tilt - 90;
    set.weight[i] = weight * open * shade.sunlit(sx, sy, sz);
  });
  return set;
}

const keptShares = new WeakMap<readonly HorizonPoint[], Map<string, Float64Array>>();

/** Open share of each patch of sky; kept, as all openings of a plane share them. */
function openShares(
  horizon: readonly HorizonPoint[],
  plane: Plane,
  axes: PlaneAxes,
  skyline: Float64Array,
  list: readonly Patch[],
): Float64Array {
  let kept = keptShares.get(horizon);
  if (!kept) keptShares.set(horizon, (kept = new Map()));
  const key = `${plane.azimuth} ${plane.tilt}`;
  let shares = kept.get(key);
  if (!shares) {
    shares = Float64Array.from(list, (patch) => shareOverSkyline(patch, axes, skyline));
    kept.set(key, shares);
  }
  return shares;
}

/** Share of a patch of sky that lies above the skyline. */
function shareOverSkyline(patch: Patch, axes: PlaneAxes, skyline: Float64Array): number {
  let open = 0;
  for (let i = 0; i < ACROSS; i++) {
    const theta = patch.theta0 + ((i + 0.5) / ACROSS) * (patch.theta1 - patch.theta0);
    for (let j = 0; j < UP; j++) {
      const v = patch.v0 + ((j + 0.5) / UP) * (patch.v1 - patch.v0);
      const d = worldDirection(axes, theta, Math.asin(v));
      if (Math.asin(Math.min(d[2], 1)) / RAD > skylineAt(skyline, d)) open++;
    }
  }
  return open / (ACROSS * UP);
}

/** A direction in east, north and up. */
function worldDirection(axes: PlaneAxes, theta: number, profile: number): number[] {
  const across = Math.sin(theta);
  const x = Math.cos(theta);
  const y = across * Math.sin(profile);
  const z = across * Math.cos(profile);
  const { right: r, upslope: u, normal: n } = axes;
  return [
    x * r[0] + y * u[0] + z * n[0],
    x * r[1] + y * u[1] + z * n[1],
    x * r[2] + y * u[2] + z * n[2],
  ];
}

/** Altitude of the skyline at every whole degree of azimuth; nothing where it is open all round. */
function horizonTable(horizon: readonly HorizonPoint[]): Float64Array | undefined {
  if (!horizon.some((point) => point.altitude > 0)) return undefined;
  const sorted = [...horizon].sort((p, q) => p.azimuth - q.azimuth);
  return Float64Array.from({ length: 361 }, (_, at) => Math.max(horizonAltitude(sorted, at), 0));
}

function skylineAt(skyline: Float64Array, direction: readonly number[]): number {
  const azimuth = Math.atan2(direction[0], direction[1]) / RAD;
  const at = azimuth < 0 ? azimuth + 360 : azimuth;
  const i = Math.min(Math.floor(at), 359);
  return skyline[i] + (skyline[i + 1] - skyline[i]) * (at - i);
}

function directionSet(n: number): DirectionSet {
  return {
    cosIncidence: new Float64Array(n),
    profileAngle: new Float64Array(n),
    weight: new Float64Array(n),
  };
}

function checkPlane(plane: Plane): void {
  if (!Number.isFinite(plane.azimuth)) {
    const texts = {
      message: say('opening.notNumber'),
      allowed: say('opening.azimuth'),
      fix: say('opening.azimuthFix'),
    };
    throw new InputError(problem('azimuth', texts, plane.azimuth));
  }
  if (!(plane.tilt >= 0 && plane.tilt <= 180)) {
    const texts = {
      message: say('opening.outOfRange'),
      allowed: say('opening.tilt'),
      fix: say('opening.tiltFix'),
    };
    throw new InputError(problem('tilt', texts, plane.tilt));
  }
}

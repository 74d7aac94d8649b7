import { planeAxes } from '../sun/index.ts';
import type { SunYear } from '../sun/index.ts';
import { HOURS } from '../time/index.ts';
import type { SkyYear } from './skyYear.ts';

/**
 * A year's light on one plane. Positions are those of the sun in front of the plane, `m` of them;
 * those of hour h are `hourStart[h]` up to `hourStart[h + 1]`.
 */
export interface FacadeYear {
  azimuth: number;
  tilt: number;
  stepsPerHour: number;
  /** Step of the year of each position; m values. */
  step: Uint32Array;
  hourStart: Uint32Array;
  /** Unit vector to the sun in plane coordinates, right, up the plane and outward; m values each. */
  sx: Float64Array;
  sy: Float64Array;
  sz: Float64Array;
  /** Beam and circumsolar light on the plane, W/m2; m values. */
  direct: Float64Array;
  /** Global irradiance a sensor on the open facade reads, W/m2; one a step of the year. */
  irradiance: Float64Array;
  /** 1 where the sun reaches the open facade; one a step of the year. */
  sunny: Uint8Array;
  /** Global irradiation of the open facade, hourly mean W/m2; HOURS values. */
  incident: Float64Array;
}

/** Direct irradiance from which a facade counts as sunlit by a sensor, W/m2 (common practice). */
const SUNNY = 5;

/** What a plane sees of the sky dome, as open as the site's horizon leaves it. */
export interface PlaneView {
  /** View factor of sky and of ground. */
  sky: number;
  ground: number;
  /** Share of the horizon's brightening that reaches it, 0 to 1. */
  horizon: number;
}

/** Light on a plane of given azimuth and tilt (degrees), before anything near the glass shades it. */
export function buildFacadeYear(
  sun: SunYear,
  sky: SkyYear,
  plane: { azimuth: number; tilt: number },
  view: PlaneView,
): FacadeYear {
  const { right, upslope, normal } = planeAxes(plane.azimuth, plane.tilt);
  const n = sun.step.length;
  const step = new Uint32Array(n);
  const sx = new Float64Array(n);
  const sy = new Float64Array(n);
  const sz = new Float64Array(n);
  const direct = new Float64Array(n);
  const hourStart = new Uint32Array(HOURS + 1);
  const irradiance = new Float64Array(HOURS * sun.stepsPerHour);
  const sunny = new Uint8Array(HOURS * sun.stepsPerHour);
  const incident = new Float64Array(HOURS);
  const band = Math.sin((plane.tilt * Math.PI) / 180) * view.horizon;
  const perHour = sun.stepsPerHour;
  let m = 0;

  for (let hour = 0; hour < HOURS; hour++) {
    hourStart[hour] = m;
    const diffuse = Math.max(
      sky.isotropic[hour] * view.sky +
        sky.horizonBand[hour] * band +
        sky.ground[hour] * view.ground,
      0,
    );
    let directSum = 0;
    if (diffuse > 0) irradiance.fill(diffuse, hour * perHour, (hour + 1) * perHour);
    for (let k = sun.hourStart[hour]; k < sun.hourStart[hour + 1]; k++) {
      const strength = sky.direct[k];
      if (strength <= 0) continue;
      const { east, north, up } = sun;
      const z = normal[0] * east[k] + normal[1] * north[k] + normal[2] * up[k];
      if (z <= 0) continue;
      const at = sun.step[k];
      step[m] = at;
      sx[m] = right[0] * east[k] + right[1] * north[k];
      sy[m] = upslope[0] * east[k] + upslope[1] * north[k] + upslope[2] * up[k];
      sz[m] = z;
      const onPlane = strength * z;
      direct[m] = onPlane;
      irradiance[at] += onPlane;
      if (onPlane >= SUNNY) sunny[at] = 1;
      directSum += onPlane;
      m++;
    }
    incident[hour] = diffuse + directSum / perHour;
  }
  hourStart[HOURS] = m;
  return {
    azimuth: plane.azimuth,
    tilt: plane.tilt,
    stepsPerHour: perHour,
    step: step.slice(0, m),
    hourStart,
    sx: sx.slice(0, m),
    sy: sy.slice(0, m),
    sz: sz.slice(0, m),
    direct: direct.slice(0, m),
    irradiance,
    sunny,
    incident,
  };
}

const RAD = Math.PI / 180;
const KAPPA = 1.041; // with the zenith in radians
const MIN_COS_ZENITH = Math.cos(85 * RAD);

/** Upper bounds of the clearness bins, Perez et al. (1990), table 1. */
const BINS = [1.065, 1.23, 1.5, 1.95, 2.8, 4.5, 6.2];

/** f11 f12 f13 f21 f22 f23 by clearness bin: Perez et al. (1990), table 6, all-sites composite. */
const F = [
  [-0.008, 0.588, -0.062, -0.06, 0.072, -0.022],
  [0.13, 0.683, -0.151, -0.019, 0.066, -0.029],
  [0.33, 0.487, -0.221, 0.055, -0.064, -0.026],
  [0.568, 0.187, -0.295, 0.109, -0.152, -0.014],
  [0.873, -0.392, -0.362, 0.226, -0.462, 0.001],
  [1.132, -1.237, -0.412, 0.288, -0.823, 0.056],
  [1.06, -1.6, -0.359, 0.264, -1.127, 0.131],
  [0.678, -0.327, -0.25, 0.156, -1.377, 0.251],
];

export interface TranspositionInput {
  /** W/m2. */
  dni: number;
  dhi: number;
  /** Irradiance outside the atmosphere, normal to the sun, W/m2. */
  extraterrestrial: number;
  /** Relative optical air mass (Kasten & Young 1989). */
  airMass: number;
  /** Sun's zenith, degrees. */
  zenith: number;
  /** Cosine of the incidence angle; negative behind the plane. */
  cosIncidence: number;
  /** Plane's tilt, degrees. */
  tilt: number;
}

/** Sky diffuse on a plane by its parts, W/m2; the horizon part may be negative. */
export interface SkyParts {
  isotropic: number;
  circumsolar: number;
  horizon: number;
  /** Sum of the parts. */
  total: number;
}

/**
 * Circumsolar and horizon brightening coefficients F1 and F2 of Perez, Ineichen, Seals, Michalsky &
 * Stewart (1990), "Modeling daylight availability and irradiance components from direct and global
 * irradiance", Solar Energy 44(5), eqs 1, 2, 6, 7. F1 is held at zero or more. Written into `out`
 * so that a year needs no allocation.
 */
export function perezCoefficients(
  dni: number,
  dhi: number,
  extraterrestrial: number,
  relativeAirMass: number,
  zenith: number,
  out: { f1: number; f2: number },
): void {
  if (dhi <= 0) {
    out.f1 = 0;
    out.f2 = 0;
    return;
  }
  const z = zenith * RAD;
  const z3 = KAPPA * z * z * z;
  const clearness = ((dhi + dni) / dhi + z3) / (1 + z3);
  const brightness = (dhi * relativeAirMass) / extraterrestrial;
  let bin = 0;
  while (bin < BINS.length && clearness >= BINS[bin]) bin++;
  const f = F[bin];
  out.f1 = Math.max(0, f[0] + f[1] * brightness + f[2] * z);
  out.f2 = f[3] + f[4] * brightness + f[5] * z;
}

/** Cosine of the zenith that the circumsolar part is divided by: not under 85 degrees' (Perez). */
export function circumsolarCosine(cosZenith: number): number {
  return Math.max(cosZenith, MIN_COS_ZENITH);
}

/** Sky diffuse on a plane by Perez et al. (1990), eq. 9, parts kept apart; all zero where the sum is not positive. */
export function perez(input: TranspositionInput): SkyParts {
  const c = { f1: 0, f2: 0 };
  perezCoefficients(input.dni, input.dhi, input.extraterrestrial, input.airMass, input.zenith, c);
  const b = circumsolarCosine(Math.cos(input.zenith * RAD));
  const isotropic = (input.dhi * (1 - c.f1) * (1 + Math.cos(input.tilt * RAD))) / 2;
  const circumsolar = (input.dhi * c.f1 * Math.max(input.cosIncidence, 0)) / b;
  const horizon = input.dhi * c.f2 * Math.sin(input.tilt * RAD);
  const total = isotropic + circumsolar + horizon;
  return total > 0
    ? { isotropic, circumsolar, horizon, total }
    : { isotropic: 0, circumsolar: 0, horizon: 0, total: 0 };
}

/**
 * Sky diffuse on a plane by Hay & Davies (1980), "Calculation of the solar radiation incident on an
 * inclined surface": the anisotropy index dni / extraterrestrial is circumsolar, the rest even.
 */
export function hayDavies(input: Omit<TranspositionInput, 'airMass'>): SkyParts {
  const index = input.dni / input.extraterrestrial;
  const cosZenith = Math.max(Math.cos(input.zenith * RAD), 0.01745);
  const circumsolar = (input.dhi * index * Math.max(input.cosIncidence, 0)) / cosZenith;
  const isotropic = (input.dhi * (1 - index) * (1 + Math.cos(input.tilt * RAD))) / 2;
  return { isotropic, circumsolar, horizon: 0, total: isotropic + circumsolar };
}

/** Ground-reflected irradiance of an unobstructed plane, W/m2: albedo x global x ground view. */
export function planeGround(ghi: number, albedo: number, tilt: number): number {
  return (ghi * albedo * (1 - Math.cos(tilt * RAD))) / 2;
}

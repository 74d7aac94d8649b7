export { sunPosition, refraction } from './position.ts';
export { airMass, extraterrestrialNormal, SOLAR_CONSTANT } from './irradiance.ts';
export { incidenceCosine, planeAxes, profileAngle, toPlane } from './incidence.ts';
export type { PlaneAxes } from './incidence.ts';
export { buildSunYear } from './sunYear.ts';
export type { SunYear, SunYearOptions } from './sunYear.ts';

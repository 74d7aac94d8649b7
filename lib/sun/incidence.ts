const RAD = Math.PI / 180;

/** Unit vectors of a plane in (east, north, up): right as seen from outside, up the plane, outward. */
export interface PlaneAxes {
  right: readonly [number, number, number];
  upslope: readonly [number, number, number];
  normal: readonly [number, number, number];
}

/**
 * Axes of a plane by its azimuth (of the outward normal, degrees clockwise from north) and tilt
 * (degrees from the horizontal, 90 a wall).
 */
export function planeAxes(azimuth: number, tilt: number): PlaneAxes {
  const sinA = Math.sin(azimuth * RAD);
  const cosA = Math.cos(azimuth * RAD);
  const sinB = Math.sin(tilt * RAD);
  const cosB = Math.cos(tilt * RAD);
  return {
    right: [-cosA, sinA, 0],
    upslope: [-cosB * sinA, -cosB * cosA, sinB],
    normal: [sinB * sinA, sinB * cosA, cosB],
  };
}

/** A direction given by azimuth and altitude, degrees, in the coordinates of a plane. */
export function toPlane(
  axes: PlaneAxes,
  azimuth: number,
  altitude: number,
): [number, number, number] {
  const cosH = Math.cos(altitude * RAD);
  const east = cosH * Math.sin(azimuth * RAD);
  const north = cosH * Math.cos(azimuth * RAD);
  const up = Math.sin(altitude * RAD);
  const along = (v: readonly [number, number, number]) => v[0] * east + v[1] * north + v[2] * up;
  return [along(axes.right), along(axes.upslope), along(axes.normal)];
}

/**
 * Cosine of the incidence angle, cos i = cos z cos b + sin z sin b cos(azSun - azPlane); negative
 * behind the plane. All angles in degrees.
 */
export function incidenceCosine(
  sun: { azimuth: number; altitude: number },
  plane: { azimuth: number; tilt: number },
): number {
  const z = (90 - sun.altitude) * RAD;
  const b = plane.tilt * RAD;
  return (
    Math.cos(z) * Math.cos(b) +
    Math.sin(z) * Math.sin(b) * Math.cos((sun.azimuth - plane.azimuth) * RAD)
  );
}

/**
 * Profile angle of the sun on a wall, degrees: tan p = tan(altitude) / cos(azSun - azWall). Beyond
 * 90 degrees the sun is behind the wall.
 */
export function profileAngle(
  sun: { azimuth: number; altitude: number },
  wallAzimuth: number,
): number {
  const ahead = Math.cos((sun.azimuth - wallAzimuth) * RAD);
  return Math.atan2(Math.tan(sun.altitude * RAD), ahead) / RAD;
}

import type { OpeningGeometry, Plane } from '../opening/index.ts';
import type { ProjectOpening, ProjectWall } from './schema.ts';

/** The part of an opening that lib/opening asks for. */
export function geometryOf(opening: ProjectOpening): OpeningGeometry {
  const { width, height, frame, setBack, reveal, revealReflectance } = opening;
  const { overhang, finLeft, finRight } = opening;
  return {
    width,
    height,
    frame: frame.widths,
    setBack,
    reveal,
    revealReflectance,
    ...(overhang && { overhang }),
    ...(finLeft && { finLeft }),
    ...(finRight && { finRight }),
  };
}

/** The plane of a wall; 360 degrees is north again. */
export function planeOf(wall: ProjectWall): Plane {
  return { azimuth: wall.azimuth % 360, tilt: wall.tilt };
}

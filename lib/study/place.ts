import type { TypicalYear } from '../climate/index.ts';
import type { Text } from '../problem/index.ts';
import type { Project } from '../project/index.ts';
import { sayProblem as say } from '../words/index.ts';

/** Where the sun of a study stands and which clock its schedules follow. */
export interface StudyPlace {
  latitude: number;
  longitude: number;
  elevation: number;
  timeZone: string;
  /** Set where the weather is of another place than the site. */
  warning?: Text;
}

/** Degrees of latitude or longitude up to which weather is taken as the site's own. */
const NEAR = 1;

/**
 * The place of a study. Weather of somewhere else brings its own sun and clock: its hours would
 * otherwise be read against a sun that stood elsewhere when they were measured.
 */
export function studyPlace(site: Project['site'], year: TypicalYear): StudyPlace {
  const eastWest = Math.abs(((site.longitude - year.longitude + 540) % 360) - 180);
  const near = Math.abs(site.latitude - year.latitude) <= NEAR && eastWest <= NEAR;
  if (near) {
    const { latitude, longitude, elevation, timeZone } = site;
    return { latitude, longitude, elevation, timeZone };
  }
  const offset = -Math.round(year.startUtc);
  // The zone database names fixed offsets by how far UTC is ahead: Etc/GMT+7 is UTC-7.
  const timeZone = offset === 0 ? 'Etc/GMT' : `Etc/GMT${offset > 0 ? '-' : '+'}${Math.abs(offset)}`;
  return {
    latitude: year.latitude,
    longitude: year.longitude,
    elevation: year.elevation,
    timeZone,
    warning: say('study.elsewhere', {
      weather: year.source.name,
      latitude: year.latitude,
      longitude: year.longitude,
      site: site.name,
      siteLatitude: site.latitude,
      siteLongitude: site.longitude,
    }),
  };
}

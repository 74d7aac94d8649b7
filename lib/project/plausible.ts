import type { Blind } from '../blind/index.ts';
import type { Problem } from '../problem/index.ts';
import { standardOffset } from '../time/index.ts';
import { show } from './issues.ts';
import type { LibraryStation, ProjectLibrary } from './library.ts';
import type { ProjectOpening, ProjectSite, Project } from './schema.ts';
import { pathText } from './walk.ts';

/** Hours between zone time and sun time; the widest gap on land is a little over three. */
const ZONE_GAP = 3.75;
/** Distance beyond which a station's climate is another one, km (common practice). */
const FAR = 150;
/** Mean radius of the earth, km. */
const EARTH = 6371;

/** What can be computed but looks like a slip or will surprise. */
export function warningsOf(project: Project, library: ProjectLibrary): Problem[] {
  const blinds = new Map([...library.blinds, ...project.blinds].map((b) => [b.id, b]));
  return [
    ...zoneWarning(project.site),
    ...stationWarning(project, library.stations),
    ...(project.openings.length ? [] : [NO_OPENINGS]),
    ...project.openings.flatMap((opening, i) => {
      const at = pathText(project, ['openings', i]);
      return [
        ...planeWarning(project, opening, at),
        ...blindWarnings(project, opening, at, blinds),
      ];
    }),
    ...emptyGroups(project),
  ];
}

const NO_OPENINGS: Problem = {
  path: 'openings',
  message: 'has no entries, so there is nothing to study',
  value: '[]',
  allowed: 'one opening or more',
  fix: 'Add an opening.',
};

function zoneWarning(site: ProjectSite): Problem[] {
  const offset = standardOffset(site.timeZone, 2026);
  const turned = (((offset - site.longitude / 15 + 12) % 24) + 24) % 24;
  if (Math.abs(turned - 12) <= ZONE_GAP) return [];
  return [
    {
      path: 'site.timeZone',
      message: `is far from the sun's time at longitude ${site.longitude}`,
      value: show(site.timeZone),
      allowed: `within ${ZONE_GAP} h of longitude / 15`,
      fix: 'Check the zone, and the sign of the longitude: west is negative.',
    },
  ];
}

function stationWarning(project: Project, stations: readonly LibraryStation[]): Problem[] {
  const { climate, site } = project;
  if (climate.kind !== 'station') return [];
  const station = stations.find((s) => s.id === climate.station);
  if (station?.latitude === undefined || station.longitude === undefined) return [];
  const distance = kilometres(site, { latitude: station.latitude, longitude: station.longitude });
  if (distance <= FAR) return [];
  return [
    {
      path: 'climate.station',
      message: `is ${Math.round(distance)} km from the site`,
      value: show(climate.station),
      allowed: `within ${FAR} km`,
      fix: 'Take a nearer station, or give monthly values or an hourly file of the place.',
    },
  ];
}

interface Place {
  latitude: number;
  longitude: number;
}

/** Great-circle distance, km (haversine formula). */
function kilometres(a: Place, b: Place): number {
  const rad = Math.PI / 180;
  const half = (x: number) => Math.sin((x * rad) / 2) ** 2;
  const h =
    half(b.latitude - a.latitude) +
    Math.cos(a.latitude * rad) * Math.cos(b.latitude * rad) * half(b.longitude - a.longitude);
  return 2 * EARTH * Math.asin(Math.min(1, Math.sqrt(h)));
}

function planeWarning(project: Project, opening: ProjectOpening, at: string): Problem[] {
  const wall = project.walls.find((w) => w.id === opening.wall);
  if (!wall) return [];
  const roof = wall.tilt < 80;
  if (opening.kind === 'rooflight' ? roof : opening.kind !== 'door' || !roof) return [];
  return [
    {
      path: `${at}.kind`,
      message: `does not suit a plane tilted ${wall.tilt} degrees`,
      value: show(opening.kind),
      allowed: roof ? 'rooflight, window or fixed in a roof' : 'window, door or fixed in a wall',
      fix: `Check the kind, or the tilt of wall "${wall.id}".`,
    },
  ];
}

function blindWarnings(
  project: Project,
  opening: ProjectOpening,
  at: string,
  blinds: ReadonlyMap<string, Blind>,
): Problem[] {
  const use = opening.blind;
  const blind = use && blinds.get(use.blind);
  if (!use || !blind) return [];
  const warnings: Problem[] = [];
  const warn = (path: string, message: string, value: unknown, allowed: string, fix: string) =>
    warnings.push({ path: `${at}.blind${path}`, message, value: show(value), allowed, fix });

  if (use.schedule === undefined && use.group === undefined) {
    const message = 'has neither a schedule nor a group, so it stays raised';
    warn('', message, use.blind, 'a schedule or a group', 'Add one of them.');
  }
  if (blind.kind !== 'slats' && use.standingAngle !== undefined) {
    const message = `has no effect: "${blind.id}" has no slats`;
    warn('.standingAngle', message, use.standingAngle, 'slats only', 'Delete it.');
  }
  const windless = use.windLimit === undefined && blind.windLimit === undefined;
  if (blind.position === 'external' && blind.kind !== 'shutter' && windless) {
    const message = 'is missing for an external blind, which wind can wreck';
    const fix = "Take the limit from the maker's data; 8 to 13 m/s is common practice for slats.";
    warn('.windLimit', message, undefined, '1 to 40 m/s', fix);
  }
  return [...warnings, ...angleWarnings(project, use, blind)];
}

/** Schedule angles the drive cannot reach. */
function angleWarnings(
  project: Project,
  use: NonNullable<ProjectOpening['blind']>,
  blind: Blind,
): Problem[] {
  if (blind.kind !== 'slats') return [];
  const group = project.groups.find((g) => g.id === use.group);
  const s = project.schedules.findIndex((x) => x.id === (group?.schedule ?? use.schedule));
  return (project.schedules[s]?.rules ?? []).flatMap(({ then }, r) => {
    if (then.kind !== 'tilt' || (then.angle >= blind.angleMin && then.angle <= blind.angleMax)) {
      return [];
    }
    return [
      {
        path: pathText(project, ['schedules', s, 'rules', r, 'then', 'angle']),
        message: `is out of reach of the drive of "${blind.id}", which stops before it`,
        value: show(then.angle),
        allowed: `${blind.angleMin} to ${blind.angleMax} degrees`,
        fix: 'Take an angle the drive reaches.',
      },
    ];
  });
}

function emptyGroups(project: Project): Problem[] {
  return project.groups.flatMap((group, i) => {
    if (project.openings.some((o) => o.blind?.group === group.id)) return [];
    return [
      {
        path: pathText(project, ['groups', i]),
        message: 'moves no blind',
        value: show(group.id),
        allowed: 'the group of one blind or more',
        fix: 'Name it as the group of a blind, or delete it.',
      },
    ];
  });
}

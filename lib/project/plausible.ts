import type { Blind } from '../blind/index.ts';
import type { Problem, Text } from '../problem/index.ts';
import { standardOffset } from '../time/index.ts';
import type { LibraryStation, ProjectLibrary } from './library.ts';
import { say, told } from './say.ts';
import type { House, ProjectOpening, ProjectSite } from './schema.ts';
import { pathText } from './walk.ts';

/** Hours between zone time and sun time; the widest gap on land is a little over three. */
const ZONE_GAP = 3.75;
/** Distance beyond which a station's climate is another one, km (common practice). */
const FAR = 150;
/** Mean radius of the earth, km. */
const EARTH = 6371;

/** What can be computed but looks like a slip or will surprise. */
export function warningsOf(project: House, library: ProjectLibrary): Problem[] {
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

const NO_OPENINGS = told(
  'openings',
  {
    message: say('noOpenings.message'),
    allowed: say('noOpenings.allowed'),
    fix: say('noOpenings.fix'),
  },
  [],
);

function zoneWarning(site: ProjectSite): Problem[] {
  const offset = standardOffset(site.timeZone, 2026);
  const turned = (((offset - site.longitude / 15 + 12) % 24) + 24) % 24;
  if (Math.abs(turned - 12) <= ZONE_GAP) return [];
  return [
    told(
      'site.timeZone',
      {
        message: say('zone.far', { longitude: site.longitude }),
        allowed: say('zone.allowed', { gap: ZONE_GAP }),
        fix: say('zone.fix'),
      },
      site.timeZone,
    ),
  ];
}

function stationWarning(project: House, stations: readonly LibraryStation[]): Problem[] {
  const { climate, site } = project;
  if (climate.kind !== 'station') return [];
  const station = stations.find((s) => s.id === climate.station);
  if (station?.latitude === undefined || station.longitude === undefined) return [];
  const distance = kilometres(site, { latitude: station.latitude, longitude: station.longitude });
  if (distance <= FAR) return [];
  return [
    told(
      'climate.station',
      {
        message: say('station.far', { distance: Math.round(distance) }),
        allowed: say('station.allowed', { far: FAR }),
        fix: say('station.fix'),
      },
      climate.station,
    ),
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

function planeWarning(project: House, opening: ProjectOpening, at: string): Problem[] {
  const wall = project.walls.find((w) => w.id === opening.wall);
  if (!wall) return [];
  const roof = wall.tilt < 80;
  if (opening.kind === 'rooflight' ? roof : opening.kind !== 'door' || !roof) return [];
  return [
    told(
      `${at}.kind`,
      {
        message: say('plane.unsuited', { tilt: wall.tilt }),
        allowed: say(roof ? 'plane.roof' : 'plane.wall'),
        fix: say('plane.fix', { wall: wall.id }),
      },
      opening.kind,
    ),
  ];
}

function blindWarnings(
  project: House,
  opening: ProjectOpening,
  at: string,
  blinds: ReadonlyMap<string, Blind>,
): Problem[] {
  const use = opening.blind;
  const blind = use && blinds.get(use.blind);
  if (!use || !blind) return [];
  const warnings: Problem[] = [];
  const warn = (path: string, message: Text, value: unknown, allowed: Text, fix: Text) =>
    warnings.push(told(`${at}.blind${path}`, { message, allowed, fix }, value));

  if (use.schedule === undefined && use.group === undefined) {
    const message = say('unmoved.message');
    warn('', message, use.blind, say('unmoved.allowed'), say('unmoved.fix'));
  }
  if (blind.kind !== 'slats' && use.standingAngle !== undefined) {
    const message = say('noSlats.message', { blind: blind.id });
    warn('.standingAngle', message, use.standingAngle, say('noSlats.allowed'), say('delete'));
  }
  const windless = use.windLimit === undefined && blind.windLimit === undefined;
  if (blind.position === 'external' && blind.kind !== 'shutter' && windless) {
    const message = say('windLimit.message');
    warn('.windLimit', message, undefined, say('windLimit.allowed'), say('windLimit.fix'));
  }
  return [...warnings, ...angleWarnings(project, use, blind)];
}

/** Schedule angles the drive cannot reach. */
function angleWarnings(
  project: House,
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
      told(
        pathText(project, ['schedules', s, 'rules', r, 'then', 'angle']),
        {
          message: say('angle.stopsBefore', { blind: blind.id }),
          allowed: say('angle.allowed', { min: blind.angleMin, max: blind.angleMax }),
          fix: say('angle.fix'),
        },
        then.angle,
      ),
    ];
  });
}

function emptyGroups(project: House): Problem[] {
  return project.groups.flatMap((group, i) => {
    if (project.openings.some((o) => o.blind?.group === group.id)) return [];
    return [
      told(
        pathText(project, ['groups', i]),
        {
          message: say('emptyGroup.message'),
          allowed: say('emptyGroup.allowed'),
          fix: say('emptyGroup.fix'),
        },
        group.id,
      ),
    ];
  });
}

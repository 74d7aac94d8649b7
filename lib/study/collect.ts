import type { TypicalYear } from '../climate/index.ts';
import type { Project } from '../project/index.ts';
import type { Room } from '../room/index.ts';
import { HOURS } from '../time/index.ts';
import type { YearCalendar } from '../time/index.ts';
import type { MovedOpening } from './blindStages.ts';
import type { Stage, StageCache } from './cache.ts';
import type { SiteLight } from './lightStages.ts';
import type { StudyPlace } from './place.ts';
import type { House } from './resolve.ts';

import type {
  FacadeResult,
  GainSums,
  HourlyGains,
  OpeningResult,
  RoomResult,
  StudyResult,
} from './results.ts';
import { roomOutcome } from './roomOutcome.ts';
import type { RoomRun, RoomRuns } from './roomRun.ts';
import { addSums, findPeak, sumEnergy } from './summary.ts';
import type { EnergySums, Peak } from './summary.ts';

/** What the sums need to know besides the openings. */
export interface StudyContext {
  project: Project;
  place: StudyPlace;
  house: House;
  site: SiteLight;
  year: TypicalYear;
}

/** Sums the hourly gains of every opening, facade and the house. */
export function collect(
  cache: StageCache,
  context: StudyContext,
  moved: readonly MovedOpening[],
  runs: readonly RoomRuns[],
): StudyResult {
  const { project, place, house, site, year } = context;
  const openings = moved.map((opening) => openingResult(cache, site, opening, place.latitude));
  const facades = house.walls.flatMap((wall): FacadeResult[] => {
    const members = openings.filter((o) => o.wall === wall.id);
    if (members.length === 0) return [];
    const gains = moved.filter((m) => m.opening.wall === wall.id);
    const inputs = [gains.map((m) => [m.bare.id, m.gain.id, m.opening.count]), site.calendar.id];
    const peaks = cache.get('peaks', inputs, () => peaksTogether(members, site.calendar.value));
    return [
      {
        id: wall.id,
        name: wall.name,
        plane: wall.plane,
        glassArea: members.reduce((area, o) => area + o.glassArea, 0),
        sums: addGains(members.map((o) => o.sums)),
        peakWithout: peaks.value.without,
        peakWith: peaks.value.with,
        openings: members.map((o) => o.id),
      },
    ];
  });
  return {
    place,
    calendar: site.calendar.value,
    weather: year.source,
    openings,
    facades,
    rooms: house.rooms.map((room, i) => roomResult(cache, project, room, house, runs[i])),
    total: addGains(openings.map((o) => o.sums)),
    sunny: new Map([...site.facades].map(([wall, facade]) => [wall, facade.value.sunny])),
    warnings: [...(place.warning ? [place.warning] : []), ...year.messages],
  };
}

interface SeriesSummary {
  sums: EnergySums;
  peak: Peak;
}

function openingResult(
  cache: StageCache,
  site: SiteLight,
  moved: MovedOpening,
  latitude: number,
): OpeningResult {
  const { opening, facade, shade, bare, gain, blind } = moved;
  const { calendar } = site;
  const glassArea = shade.value.glassArea * opening.count;
  const summary = (stage: Stage<unknown>, series: Float64Array, name: string): SeriesSummary =>
    cache.get('sums', [stage.id, name, glassArea, calendar.id, latitude], () => ({
      sums: sumEnergy(series, glassArea, calendar.value, latitude),
      peak: findPeak(series, calendar.value),
    })).value;

  const hourly: HourlyGains = {
    incident: facade.value.incident,
    sunlit: bare.value.sunlit,
    without: bare.value.gain,
    with: gain.value,
  };
  const without = summary(bare, hourly.without, 'without');
  const withShading = summary(gain, hourly.with, 'with');
  return {
    id: opening.id,
    name: opening.name,
    wall: opening.wall,
    room: opening.room,
    plane: opening.plane,
    count: opening.count,
    glassArea,
    sums: {
      incident: summary(facade, hourly.incident, 'incident').sums,
      sunlit: summary(bare, hourly.sunlit, 'sunlit').sums,
      without: without.sums,
      with: withShading.sums,
    },
    peakWithout: without.peak,
    peakWith: withShading.peak,
    hourly,
    blind: blind?.value,
  };
}

function roomResult(
  cache: StageCache,
  { settings }: Project,
  { id, name, floorArea }: Room,
  house: House,
  runs: RoomRuns,
): RoomResult {
  const outcome = (run: Stage<RoomRun>) =>
    cache.get('criteria', [run.id, settings], () => roomOutcome(run.value, settings)).value;
  return {
    id,
    name,
    floorArea,
    openings: house.openings.filter((o) => o.room === id).map((o) => o.id),
    without: outcome(runs.without),
    with: outcome(runs.with),
    runs: { without: runs.without.value, with: runs.with.value },
  };
}

function addGains(parts: readonly GainSums[]): GainSums {
  return {
    incident: addSums(parts.map((p) => p.incident)),
    sunlit: addSums(parts.map((p) => p.sunlit)),
    without: addSums(parts.map((p) => p.without)),
    with: addSums(parts.map((p) => p.with)),
  };
}

/** Strongest hours of several openings together, W/m2 of their glass. */
function peaksTogether(members: readonly OpeningResult[], calendar: YearCalendar) {
  if (members.length === 1) {
    return { without: members[0].peakWithout, with: members[0].peakWith };
  }
  const area = members.reduce((sum, o) => sum + o.glassArea, 0);
  const mean = (pick: (hourly: HourlyGains) => Float64Array) => {
    const together = new Float64Array(HOURS);
    for (const { hourly, glassArea } of members) {
      const series = pick(hourly);
      const weight = glassArea / area;
      for (let hour = 0; hour < HOURS; hour++) together[hour] += weight * series[hour];
    }
    return findPeak(together, calendar);
  };
  return { without: mean((h) => h.without), with: mean((h) => h.with) };
}

import type { Decision } from '../../../lib/decide/index.ts';
import type { Project } from '../../../lib/project/index.ts';
import { sunAndCover } from '../../client/index.ts';
import type { PageFacts, PageHours, RoomHours, Sunned } from '../../client/index.ts';
import { blinds, glazings } from '../../library/index.ts';
import type { OpeningSummary, StudySummary } from '../../worker/api.ts';
import type { EngineState } from '../state/engine.svelte.ts';
import { fileNameOf } from '../parts/figure/download.ts';
import { ENDING } from '../files/projectFile.ts';

type Source = Pick<EngineState, 'hourly' | 'blindState' | 'roomHourly' | 'calendar' | 'weather'>;

/**
 * Everything the client page is made from, asked of the engine and the decision. Undefined where the
 * engine has gone on to another project meanwhile.
 */
export async function loadFacts(
  engine: Source,
  project: Project,
  study: StudySummary,
  decision: Decision,
): Promise<PageFacts | undefined> {
  const { climate } = project;
  const [hours, station] = await Promise.all([
    loadHours(engine, study),
    climate.kind === 'station' ? stationOf(climate.station) : undefined,
  ]);
  if (!hours) return undefined;
  return {
    project,
    fileName: fileNameOf(project.name, ENDING),
    date: new Date(),
    glazings,
    blinds,
    study,
    hours,
    decision,
    ...(station ? { normals: station.normals } : {}),
  };
}

async function stationOf(id: string) {
  const { stations } = await import('../../library/climates.ts');
  return stations.find((s) => s.id === id);
}

async function loadHours(engine: Source, study: StudySummary): Promise<PageHours | undefined> {
  const [calendar, weather] = await Promise.all([engine.calendar(), engine.weather()]);
  const rooms = await Promise.all(study.rooms.map((room) => loadRoom(engine, study, room.id)));
  if (!calendar || !weather || rooms.some((room) => room === undefined)) return undefined;
  return { calendar, outdoor: weather.dryBulb, rooms: rooms as RoomHours[] };
}

async function loadRoom(
  engine: Source,
  { openings }: StudySummary,
  id: string,
): Promise<RoomHours | undefined> {
  const own = openings.filter((o) => o.room === id);
  const [without, shaded, sunned] = await Promise.all([
    engine.roomHourly(id, 'without', 'operative'),
    engine.roomHourly(id, 'with', 'operative'),
    Promise.all(own.map((opening) => loadSun(engine, opening))),
  ]);
  if (!without || !shaded || sunned.some((o) => o === undefined)) return undefined;
  return { id, without, with: shaded, ...sunAndCover(sunned as Sunned[]) };
}

async function loadSun(
  engine: Source,
  { id, glassArea, blind }: OpeningSummary,
): Promise<Sunned | undefined> {
  const [sunlit, state] = await Promise.all([engine.hourly(id, 'sunlit'), engine.blindState(id)]);
  if (!sunlit) return undefined;
  const given = { glassArea, hourly: { sunlit } };
  return blind && state ? { ...given, blind: { actions: blind.actions, state } } : given;
}

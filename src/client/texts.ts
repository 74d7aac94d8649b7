import { plannedExternal } from '../../lib/decide/index.ts';
import { neededOpenings } from './answer.ts';
import { checksum } from './checksum.ts';
import { escapeRoutes } from './costs.ts';
import { blindOf } from './facts.ts';
import type { PageFacts } from './facts.ts';
import type { Teller } from './teller.ts';
import { VERSION } from './version.ts';

/** What the figures rest on, in sentences. */
export function assumptions(facts: PageFacts, teller: Teller): string[] {
  const { t, words } = teller;
  const { project } = facts;
  const limit = teller.quantity('temperature', project.settings.overheatingLimit, 0);
  const rooms = project.rooms.map((r) => `${r.name} (${teller.quantity('area', r.floorArea, 0)})`);
  const airing = project.rooms.flatMap((r) => r.airing);
  const own = new Set([...project.glazings, ...project.blinds].map((x) => x.id));
  const used = project.openings.flatMap((o) => [o.glazing, ...(o.blind ? [o.blind.blind] : [])]);
  return [
    t('assume.hot', { limit }),
    t('assume.year', { weather: facts.study.weather.name }),
    t('assume.rooms', { rooms: words.list(rooms) }),
    t(airing.length > 0 ? 'assume.airing' : 'assume.noAiring'),
    ...(project.openings.some((o) => o.blind ?? o.insectScreen) ? [t('assume.moved')] : []),
    t('assume.setAlone'),
    ...(used.some((id) => !own.has(id)) ? [t('assume.typical')] : []),
  ];
}

/** Sentences about the weather and the place that the reader should know. */
export function weatherNotes({ study, project }: PageFacts, teller: Teller): string[] {
  const { t, words } = teller;
  const { place, weather, warnings } = study;
  const { climate } = project;
  const rest = warnings.filter(({ key }) => key !== place.warning?.key);
  const isBuilt = weather.kind === 'normals' && climate.kind !== 'file';
  return [
    ...(place.warning
      ? [t('weather.elsewhere', { weather: weather.name, site: project.site.name })]
      : []),
    ...(isBuilt ? [t('weather.built', { seed: climate.seed })] : []),
    // The first sentence on built hours is the one above.
    ...rest.slice(isBuilt ? 1 : 0).map((text) => words.text(text)),
  ];
}

/** Where the hours of weather come from, in a sentence. */
export function weatherSource({ study }: PageFacts, teller: Teller): string {
  const { name, note } = study.weather;
  return teller.t('source.weather', { name, text: teller.words.text(note) });
}

/** What the reader must not overlook; the ways out come first, by name. */
export function cautions(facts: PageFacts, { t, words }: Teller): string[] {
  const { project } = facts;
  const routes = escapeRoutes(facts);
  const external = plannedExternal(project, facts).size + neededOpenings(facts).length > 0;
  const trapped = project.openings.some((o) => {
    const blind = o.blind && blindOf(facts, o.blind.blind);
    if (!blind) return false;
    return (
      blind.position === 'internal' ||
      (blind.position === 'between' && (blind.ventFactor ?? 0) < 0.5)
    );
  });
  return [
    ...(routes.length > 0
      ? [t('caution.routes', { openings: words.list(routes), text: t('caution.escape') })]
      : [t('caution.escape')]),
    t('caution.heat'),
    ...(external ? [t('caution.wind'), t('caution.height')] : []),
    t(trapped ? 'caution.trap' : 'caution.glass'),
    ...(project.rooms.some((r) => r.airing.length > 0) ? [t('caution.airing')] : []),
    t('caution.model'),
    t('caution.decides'),
  ];
}

/** Sources in short; the appendix has them all. */
export function sources(facts: PageFacts, teller: Teller): string[] {
  const { t } = teller;
  const chosen = facts.study.rooms[0]?.with.chosen;
  const isBuilt = facts.study.weather.kind === 'normals';
  return [
    t('source.weatherShort', {
      name: facts.study.weather.name,
      text: t(isBuilt ? 'weather.shortNormals' : 'weather.shortFile'),
    }),
    ...(chosen ? [t('source.criterion', { text: t(`criterionSource.${chosen.id}`) })] : []),
    t('source.models'),
    t('source.program', { version: VERSION, data: dataMark(facts) }),
  ];
}

/** Mark of the glass and blind data that ship with the program. */
export function dataMark({ glazings, blinds }: PageFacts): string {
  return checksum([glazings, blinds]);
}

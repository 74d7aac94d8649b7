import type { CriterionResult } from '../room/index.ts';
import type { RoomOutcome, StudyResult } from '../study/index.ts';
import { roomDetail, shareStopped } from '../study/index.ts';

/**
 * The sums of a study as plain data for other programs; units are in the names.
 * @param threshold operative temperature over which an hour is too hot, C
 */
export function studyJson(
  result: StudyResult,
  projectName: string,
  threshold: number,
): Record<string, unknown> {
  return {
    format: 'shadewright-results',
    version: 1,
    project: projectName,
    // Findings are data for other programs: their sentences are in English.
    place: { ...result.place, warning: result.place.warning?.english },
    weather: { ...result.weather, note: result.weather.note.english },
    warnings: result.warnings.map(({ english }) => english),
    units: { sums: 'kWh', peaks: 'W per m2 of glass', area: 'm2', angles: 'degrees' },
    openings: result.openings.map(({ hourly: _hourly, blind, ...opening }) => ({
      ...opening,
      shareStopped: stopped(opening.sums),
      blind: blind && {
        controller: blind.controller,
        actions: blind.actions,
        movesPerYear: blind.moves,
        hoursLowered: blind.hoursLowered,
        daylightHoursLowered: blind.daylightHoursLowered,
        hoursRaisedByWind: blind.hoursRaisedByWind,
      },
    })),
    facades: result.facades.map((facade) => ({ ...facade, shareStopped: stopped(facade.sums) })),
    rooms: result.rooms.map(({ runs, ...room }) => ({
      ...room,
      without: plainOutcome(room.without),
      with: plainOutcome(room.with),
      detail: {
        without: roomDetail(runs.without, threshold),
        with: roomDetail(runs.with, threshold),
      },
    })),
    total: { ...result.total, shareStopped: stopped(result.total) },
  };
}

function plainOutcome({ chosen, criteria, ...outcome }: RoomOutcome) {
  return { ...outcome, chosen: plainCriterion(chosen), criteria: criteria.map(plainCriterion) };
}

function plainCriterion({ title, source, note, ...figures }: CriterionResult) {
  return { ...figures, title: title.english, source: source.english, note: note.english };
}

function stopped(sums: StudyResult['total']) {
  return {
    year: shareStopped(sums.without.year, sums.with.year),
    summer: shareStopped(sums.without.summer, sums.with.summer),
    winter: shareStopped(sums.without.winter, sums.with.winter),
  };
}

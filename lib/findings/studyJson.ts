import type { StudyResult } from '../study/index.ts';
import { shareStopped } from '../study/index.ts';

/** The sums of a study as plain data for other programs; units are in the names. */
export function studyJson(result: StudyResult, projectName: string): Record<string, unknown> {
  return {
    format: 'shadewright-results',
    version: 1,
    project: projectName,
    place: result.place,
    weather: result.weather,
    warnings: result.warnings,
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
    total: { ...result.total, shareStopped: stopped(result.total) },
  };
}

function stopped(sums: StudyResult['total']) {
  return {
    year: shareStopped(sums.without.year, sums.with.year),
    summer: shareStopped(sums.without.summer, sums.with.summer),
    winter: shareStopped(sums.without.winter, sums.with.winter),
  };
}

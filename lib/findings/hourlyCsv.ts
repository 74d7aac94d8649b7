import Papa from 'papaparse';
import type { TypicalYear } from '../climate/index.ts';
import type { StudyResult } from '../study/index.ts';
import { HOURS, STEPS_PER_HOUR, clockText, dateText } from '../time/index.ts';

/**
 * One row an hour: local date and clock at the hour's start, the weather, then four columns an
 * opening in W per m2 of glass and, where it has a blind, the share of the hour it was lowered;
 * last each room's temperature and heating without and with shading.
 * Units stand in the headers; a name that starts like a formula is made harmless.
 */
export function hourlyCsv(result: StudyResult, year: TypicalYear): string {
  const columns: [string, (hour: number) => string | number][] = [
    ['Local date', (hour) => dateText(result.calendar, hour * STEPS_PER_HOUR)],
    ['Local clock at start', (hour) => clockText(result.calendar, hour * STEPS_PER_HOUR)],
    ['Global horizontal (W/m2)', (hour) => round(year.ghi[hour])],
    ['Direct normal (W/m2)', (hour) => round(year.dni[hour])],
    ['Diffuse horizontal (W/m2)', (hour) => round(year.dhi[hour])],
    ['Outdoor dry-bulb (C)', (hour) => round(year.dryBulb[hour])],
    ['Wind at 10 m (m/s)', (hour) => round(year.wind[hour])],
    ...result.openings.flatMap((opening): typeof columns => {
      const { hourly, blind, name } = opening;
      return [
        [`${name}: incident (W/m2 of glass)`, (hour) => round(hourly.incident[hour])],
        [`${name}: sunlit (W/m2 of glass)`, (hour) => round(hourly.sunlit[hour])],
        [`${name}: gain without shading (W/m2 of glass)`, (hour) => round(hourly.without[hour])],
        [`${name}: gain with shading (W/m2 of glass)`, (hour) => round(hourly.with[hour])],
        ...(blind
          ? [[`${name}: blind lowered (share of the hour)`, loweredShare(blind.state)] as const]
          : []),
      ] as typeof columns;
    }),
    ...result.rooms.flatMap(({ name, runs }): typeof columns => [
      [
        `${name}: operative without shading (C)`,
        (hour) => round(runs.without.year.operative[hour]),
      ],
      [`${name}: operative with shading (C)`, (hour) => round(runs.with.year.operative[hour])],
      [`${name}: heating without shading (W)`, (hour) => round(runs.without.year.heating[hour])],
      [`${name}: heating with shading (W)`, (hour) => round(runs.with.year.heating[hour])],
    ]),
  ];
  const rows = Array.from({ length: HOURS }, (_, hour) => columns.map(([, value]) => value(hour)));
  return `${Papa.unparse({ fields: columns.map(([head]) => head), data: rows }, csvStyle)}\r\n`;
}

/** Texts a spreadsheet would take for a formula get an apostrophe (OWASP, "CSV Injection"); figures stay. */
const csvStyle = { newline: '\r\n', escapeFormulae: /^[=+\-@\t\r\n]/ } as const;

function loweredShare(state: Uint8Array): (hour: number) => number {
  return (hour) => {
    let lowered = 0;
    for (let i = 0; i < STEPS_PER_HOUR; i++) {
      if (state[hour * STEPS_PER_HOUR + i]) lowered++;
    }
    return lowered / STEPS_PER_HOUR;
  };
}

/** Two decimals: finer than any figure behind it. */
function round(value: number): number {
  return Math.round(value * 100) / 100;
}

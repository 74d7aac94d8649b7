import { HOURS, STEPS_PER_HOUR, clockText, dateText } from '../../../lib/time/index.ts';
import type { FigureTable } from '../parts/figure/table.ts';
import type { SheetData, YearData } from './yearData.ts';
import { capital } from './words.ts';

/** The hours of a year sheet: local date, clock at the start, value. */
export function sheetTable({ calendar }: YearData, { kind, unit, values }: SheetData): FigureTable {
  const digits = unit.digits + 1;
  return {
    columns: [
      { head: 'Date' },
      { head: 'Clock at start' },
      { head: `${capital(kind.name)} (${unit.symbol})`, digits },
    ],
    rowCount: values ? HOURS : 0,
    cell: (hour, column) => {
      if (column === 2) return values?.[hour] ?? NaN;
      const text = column === 0 ? dateText : clockText;
      return text(calendar, hour * STEPS_PER_HOUR);
    },
  };
}

/** The quarter hours of a day strip; gains and temperatures are means of their hour. */
export function dayTable(
  data: YearData,
  steps: readonly number[],
  position: (step: number) => string,
): FigureTable {
  const { calendar, heat, temperature, covered } = data;
  const hourly = (series: Float64Array) => (step: number) =>
    series[Math.floor(step / STEPS_PER_HOUR)];
  const named = covered && steps.some((step) => position(step));
  const columns: { head: string; digits?: number; of: (step: number) => string | number }[] = [
    { head: 'Clock at start', of: (step) => clockText(calendar, step) },
    { head: `Gain without (${heat.symbol})`, digits: heat.digits + 1, of: hourly(data.without) },
    { head: `Gain with (${heat.symbol})`, digits: heat.digits + 1, of: hourly(data.with) },
    ...(covered
      ? [{ head: 'Glass covered (%)', digits: 0, of: (step: number) => covered[step] * 100 }]
      : []),
    ...(named ? [{ head: 'Blind', of: position }] : []),
    {
      head: `Outdoors (${temperature.symbol})`,
      digits: temperature.digits,
      of: hourly(data.outdoor),
    },
    ...(['without', 'with'] as const).flatMap((scheme) =>
      data.room
        ? {
            head: `Room ${scheme} (${temperature.symbol})`,
            digits: temperature.digits,
            of: hourly(data.room[scheme]),
          }
        : [],
    ),
  ];
  return {
    columns,
    rowCount: steps.length,
    cell: (row, column) => columns[column].of(steps[row]),
  };
}

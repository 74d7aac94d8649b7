import { HOURS, STEPS_PER_HOUR, clockText, dateText } from '../../../lib/time/index.ts';
import type { Wording } from '../../words/index.ts';
import type { FigureTable } from '../parts/figure/table.ts';
import { quantityName } from './quantities.ts';
import type { SheetData, YearData } from './yearData.ts';
import { capital } from './words.ts';

/** The hours of a year sheet: local date, clock at the start, value. */
export function sheetTable(
  words: Wording,
  { calendar }: YearData,
  { kind, unit, values }: SheetData,
): FigureTable {
  const t = words.of('year');
  const digits = unit.digits + 1;
  const name = capital(quantityName(words, kind.key));
  return {
    columns: [
      { head: t('table.date') },
      { head: t('table.clock') },
      { head: t('table.quantity', { name, unit: unit.symbol }), digits },
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
  words: Wording,
  data: YearData,
  steps: readonly number[],
  position: (step: number) => string,
): FigureTable {
  const t = words.of('year');
  const { calendar, heat, temperature, covered, room } = data;
  const hourly = (series: Float64Array) => (step: number) =>
    series[Math.floor(step / STEPS_PER_HOUR)];
  const named = covered && steps.some((step) => position(step));
  const gain = { digits: heat.digits + 1 };
  const warm = { digits: temperature.digits };
  const power = { unit: heat.symbol };
  const degrees = { unit: temperature.symbol };
  const columns: { head: string; digits?: number; of: (step: number) => string | number }[] = [
    { head: t('table.clock'), of: (step) => clockText(calendar, step) },
    { head: t('table.without', power), ...gain, of: hourly(data.without) },
    { head: t('table.with', power), ...gain, of: hourly(data.with) },
    ...(covered
      ? [{ head: t('table.covered'), digits: 0, of: (step: number) => covered[step] * 100 }]
      : []),
    ...(named ? [{ head: t('table.blind'), of: position }] : []),
    { head: t('table.outdoors', degrees), ...warm, of: hourly(data.outdoor) },
    ...(room
      ? [
          { head: t('table.roomWithout', degrees), ...warm, of: hourly(room.without) },
          { head: t('table.roomWith', degrees), ...warm, of: hourly(room.with) },
        ]
      : []),
  ];
  return {
    columns,
    rowCount: steps.length,
    cell: (row, column) => columns[column].of(steps[row]),
  };
}

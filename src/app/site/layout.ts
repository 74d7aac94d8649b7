import type { Quantity, TableLayout, TimeColumns } from '../../../lib/climate/index.ts';

type Units = {
  [Q in Quantity]: readonly NonNullable<TableLayout['columns'][Q]>['unit'][];
};

const IRRADIANCE = ['W/m2', 'Wh/m2', 'kWh/m2', 'kJ/m2', 'MJ/m2', 'Btu/ft2'] as const;

/** Units a column may be in; the first is the one taken when a column is pointed at. */
export const columnUnits: Units = {
  ghi: IRRADIANCE,
  dni: IRRADIANCE,
  dhi: IRRADIANCE,
  dryBulb: ['C', 'F', 'K'],
  wind: ['m/s', 'km/h', 'mph', 'kn'],
};

export const quantities = ['ghi', 'dni', 'dhi', 'dryBulb', 'wind'] as const satisfies Quantity[];

/** What may part columns, with the name it has in the language files. */
export const delimiters = [
  { value: ',', name: 'comma' },
  { value: ';', name: 'semicolon' },
  { value: '\t', name: 'tab' },
  { value: '|', name: 'bar' },
  { value: ' ', name: 'blanks' },
] as const satisfies { value: TableLayout['delimiter']; name: string }[];

/** A layout to start from where none can be told: the delimiter that parts the most cells. */
export function plainLayout(text: string): TableLayout {
  const lines = text
    .slice(0, 20_000)
    .split(/\r\n?|\n/, 40)
    .slice(0, -1);
  const cells = (delimiter: string) =>
    lines.reduce((sum, line) => sum + line.trim().split(delimiter).length - 1, 0);
  const most = delimiters
    .filter(({ value }) => value !== ' ')
    .map(({ value }) => ({ value, count: cells(value) }))
    .sort((a, b) => b.count - a.count)[0];
  return {
    headerLines: 1,
    delimiter: most.count > 0 ? most.value : ' ',
    decimal: '.',
    columns: {},
    stamp: 'end',
    utcOffset: 'site',
  };
}

/** Points a quantity at a column, or at none. */
export function withColumn(
  layout: TableLayout,
  quantity: Quantity,
  column: number | undefined,
): TableLayout {
  const unit = layout.columns[quantity]?.unit ?? columnUnits[quantity][0];
  const use = column === undefined ? undefined : { column, unit };
  return { ...layout, columns: { ...layout.columns, [quantity]: use } };
}

export function withUnit(layout: TableLayout, quantity: Quantity, unit: string): TableLayout {
  const use = layout.columns[quantity];
  if (!use) return layout;
  return { ...layout, columns: { ...layout.columns, [quantity]: { ...use, unit } } };
}

/** How a table tells its time: the kind, and the parts that need a column. */
export const timeKinds = [
  { value: 'none', parts: [] },
  { value: 'stamp', parts: ['column'] },
  { value: 'date-time', parts: ['date', 'time'] },
  { value: 'parts', parts: ['month', 'day', 'hour'] },
] as const satisfies { value: TimeColumns['kind'] | 'none'; parts: string[] }[];

/** Changes how a table tells its time; columns start at the first ones. */
export function withTimeKind(layout: TableLayout, kind: TimeColumns['kind'] | 'none'): TableLayout {
  const order = layout.time && 'order' in layout.time ? layout.time.order : 'ymd';
  switch (kind) {
    case 'none':
      return { ...layout, time: undefined };
    case 'stamp':
      return { ...layout, time: { kind, column: 0, order } };
    case 'date-time':
      return { ...layout, time: { kind, date: 0, time: 1, order } };
    case 'parts':
      return { ...layout, time: { kind, month: 0, day: 1, hour: 2 } };
  }
}

/** Points one part of the time at a column, or changes the order of a date. */
export function withTimePart(
  layout: TableLayout,
  part: string,
  value: number | string,
): TableLayout {
  return layout.time
    ? { ...layout, time: { ...layout.time, [part]: value } as TimeColumns }
    : layout;
}

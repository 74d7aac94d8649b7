import { describe, expect, it } from 'vitest';
import { guessTable, previewTable, readTypicalYear } from '../../../../lib/climate/index.ts';
import type { TableLayout } from '../../../../lib/climate/index.ts';
import { InputError } from '../../../../lib/problem/index.ts';
import {
  calendar,
  inventedSite as site,
  lines,
  localYear,
  tableHeading,
  tableRows,
  tableText,
  two,
} from './synthetic.ts';

const local = localYear();

const layout: TableLayout = {
  headerLines: 1,
  delimiter: ',',
  decimal: '.',
  time: { kind: 'stamp', column: 0, order: 'ymd' },
  columns: {
    ghi: { column: 1, unit: 'W/m2' },
    dni: { column: 2, unit: 'W/m2' },
    dhi: { column: 3, unit: 'W/m2' },
    dryBulb: { column: 4, unit: 'C' },
    wind: { column: 5, unit: 'm/s' },
  },
  stamp: 'start',
  utcOffset: -5,
};

/** Rows with their stamp made anew. */
function stamped(
  make: (month: number, day: number, hour: number, row: number) => string,
): string[] {
  return tableRows().map((row, i) => {
    const { month, day, hour } = calendar[i];
    return [make(month, day, hour, i), ...row.split(',').slice(1)].join(',');
  });
}

describe('a table by its layout', () => {
  it('gives back what it holds', () => {
    const year = readTypicalYear(tableText(), { table: layout, site, fileName: 'hut.csv' });
    expect(Array.from(year.ghi)).toEqual(local.ghi);
    expect(Array.from(year.dryBulb)).toEqual(local.dryBulb);
    expect(year.startUtc).toBe(5);
    expect(year.source).toMatchObject({ kind: 'table', name: 'hut.csv' });
    expect(year.messages).toEqual([]);
  });

  it('tells stamps taken for the wrong end of the hour by their minutes', () => {
    const table: TableLayout = { ...layout, stamp: 'end' };
    const year = readTypicalYear(tableText(), { table, site });
    const minutes = Number(
      /runs (\d+) min early/.exec(year.messages.map((m) => m.english).join(' '))?.[1],
    );
    // An hour by construction; see formats.test.ts for the tolerance.
    expect(Math.abs(minutes - 60)).toBeLessThan(6);
  });

  it('reads stamps at the end and in the middle of the hour', () => {
    const end = stamped((m, d, h) => `${two(m)}/${two(d)}/2023 ${h + 1}:00`);
    const middle = stamped((m, d, h) => `${d}.${m}.2023 ${h}:30`);
    const years = [
      readTypicalYear(lines(tableHeading, end), {
        site,
        table: { ...layout, stamp: 'end', time: { kind: 'stamp', column: 0, order: 'mdy' } },
      }),
      readTypicalYear(lines(tableHeading, middle), {
        site,
        table: { ...layout, stamp: 'middle', time: { kind: 'stamp', column: 0, order: 'dmy' } },
      }),
    ];
    for (const year of years) {
      expect(year.startUtc).toBe(5);
      expect(Array.from(year.dni)).toEqual(local.dni);
      expect(year.messages).toEqual([]);
    }
  });

  it('turns a file in UTC to the site', () => {
    // The same hours called by their UTC names: row 0 is 05:00, and the last five are 1 January's.
    const rows = stamped((_m, _d, _h, i) => {
      const c = calendar[(i + 5) % 8760];
      return `2023-${two(c.month)}-${two(c.day)}T${two(c.hour)}:00:00Z`;
    });
    const sorted = [...rows.slice(-5), ...rows.slice(0, -5)];
    const text = lines(tableHeading, sorted);
    const year = readTypicalYear(text, { site, table: { ...layout, utcOffset: 0 } });
    expect(year.startUtc).toBe(5);
    expect(Array.from(year.ghi)).toEqual(local.ghi);
    expect(guessTable(text)).toMatchObject({ layout: { utcOffset: 0 }, open: { zone: false } });
  });

  it('works out a third irradiance from two', () => {
    const without = (column: 'ghi' | 'dni' | 'dhi') =>
      readTypicalYear(tableText(), {
        site,
        table: { ...layout, columns: { ...layout.columns, [column]: undefined } },
      });
    // The table was made with global = direct x sine + diffuse at every sixth of an hour; hourly
    // means of the sine leave a few W/m2, most at sunrise, and rounding to whole W/m2 adds one.
    const year = without('dhi');
    const off = year.dhi.map((v, i) => Math.abs(v - local.dhi[i]));
    expect(Math.max(...off)).toBeLessThan(12);
    expect(year.messages.map((m) => m.english).join(' ')).toMatch(
      /no diffuse horizontal irradiance.*worked out/,
    );
    const global = without('ghi').ghi;
    expect(Math.max(...global.map((v, i) => Math.abs(v - local.ghi[i])))).toBeLessThan(12);
    // Direct is a difference over the sine: the same few W/m2 over a low sun; the year's sum counts.
    const direct = without('dni').dni;
    const sum = (values: ArrayLike<number>) => Array.from(values).reduce((a, b) => a + b, 0);
    expect(Math.abs(sum(direct) / sum(local.dni) - 1)).toBeLessThan(0.03);
  });

  it('splits global irradiance by the function given, and refuses without', () => {
    const columns = { ghi: layout.columns.ghi, dryBulb: layout.columns.dryBulb };
    const table: TableLayout = { ...layout, columns };
    expect(() => readTypicalYear(tableText(), { site, table })).toThrow(
      /no direct normal irradiance and no diffuse horizontal irradiance/,
    );
    const year = readTypicalYear(tableText(), {
      site,
      table,
      split: ({ ghi, latitude, startUtc }) => {
        expect([latitude, startUtc, ghi.length]).toEqual([44, 5, 8760]);
        return { dni: new Float64Array(8760), dhi: ghi.slice() };
      },
    });
    expect(year.dhi).toEqual(year.ghi);
    expect(year.wind.every((v) => v === 3)).toBe(true);
    expect(year.messages.map((m) => m.english).join(' ')).toMatch(/3 m\/s was taken/);
  });

  it('converts units at the edge', () => {
    // 1 Btu(IT)/(h ft2) = 3.154591 W/m2, 1 mph = 0.44704 m/s, 1 kn = 0.5144444 m/s: NIST SP 811
    // (2008), appendix B.8, given to 7 figures; the text holds 12 figures.
    const cases: [TableLayout['columns'], (v: number) => number, 'ghi' | 'dryBulb' | 'wind'][] = [
      [{ ghi: { column: 1, unit: 'Btu/ft2' } }, (v) => v / 3.154591, 'ghi'],
      [{ ghi: { column: 1, unit: 'kJ/m2' } }, (v) => v * 3.6, 'ghi'],
      [{ ghi: { column: 1, unit: 'MJ/m2' } }, (v) => v * 0.0036, 'ghi'],
      [{ ghi: { column: 1, unit: 'kWh/m2' } }, (v) => v / 1000, 'ghi'],
      [{ dryBulb: { column: 4, unit: 'F' } }, (v) => v * 1.8 + 32, 'dryBulb'],
      [{ dryBulb: { column: 4, unit: 'K' } }, (v) => v + 273.15, 'dryBulb'],
      [{ wind: { column: 5, unit: 'mph' } }, (v) => v / 0.44704, 'wind'],
      [{ wind: { column: 5, unit: 'kn' } }, (v) => v / 0.5144444, 'wind'],
      [{ wind: { column: 5, unit: 'km/h' } }, (v) => v * 3.6, 'wind'],
    ];
    for (const [columns, to, quantity] of cases) {
      const at = Object.values(columns)[0].column;
      const rows = tableRows().map((row) => {
        const cells = row.split(',');
        cells[at] = to(Number(cells[at])).toPrecision(12);
        return cells.join(',');
      });
      const table = { ...layout, columns: { ...layout.columns, ...columns } };
      const year = readTypicalYear(lines(tableHeading, rows), { site, table });
      const most = Math.max(...year[quantity].map((v, i) => Math.abs(v - local[quantity][i])));
      expect(most, JSON.stringify(columns)).toBeLessThan(2e-4);
    }
  });

  it('refuses layouts and places that cannot be', () => {
    const read =
      (table: Partial<TableLayout>, place: Partial<typeof site> = {}) =>
      () =>
        readTypicalYear(tableText(), {
          table: { ...layout, ...table },
          site: { ...site, ...place },
        });
    expect(read({ headerLines: -1 })).toThrow(/table.headerLines: .*0 to 1000/);
    expect(read({ utcOffset: 20 })).toThrow(/table.utcOffset/);
    expect(read({ decimal: ',' })).toThrow(/table.decimal/);
    expect(read({ columns: { ...layout.columns, dryBulb: undefined } })).toThrow(/dry-bulb/);
    expect(read({ columns: { ...layout.columns, ghi: { column: 40, unit: 'W/m2' } } })).toThrow(
      /line 2: has too few columns/,
    );
    const odd = { column: 1, unit: 'lux' } as unknown as { column: number; unit: 'W/m2' };
    expect(read({ columns: { ...layout.columns, ghi: odd } })).toThrow(/columns.ghi.unit.*"lux"/);
    expect(read({}, { latitude: 95 })).toThrow(/site.latitude: .*-90 to 90/);
    expect(read({}, { longitude: NaN })).toThrow(/site.longitude/);
    expect(read({ headerLines: 9000 })).toThrow(InputError);
  });
});

describe('a table by a guess', () => {
  it('finds columns, units and the date, and lets the sun settle the clock', () => {
    const { layout: found, open } = guessTable(tableText());
    expect(found).toMatchObject({ ...layout, stamp: 'end', utcOffset: 'site' });
    expect(open).toEqual({ stamp: true, zone: true });
    const year = readTypicalYear(tableText(), { site });
    expect(year.startUtc).toBe(5);
    expect(Array.from(year.dhi)).toEqual(local.dhi);
    expect(year.messages.map((m) => m.english).join(' ')).toMatch(/marks the start of the hour/);
  });

  it('finds that a clock is UTC by the sun', () => {
    const rows = stamped((_m, _d, _h, i) => {
      const c = calendar[(i + 5) % 8760];
      return `2023-${two(c.month)}-${two(c.day)} ${two(c.hour)}:00`;
    });
    const text = lines(tableHeading, [...rows.slice(-5), ...rows.slice(0, -5)]);
    const year = readTypicalYear(text, { site });
    expect(year.messages.map((m) => m.english).join(' ')).toMatch(
      /in UTC, and a stamp marks the start/,
    );
    expect(Array.from(year.ghi)).toEqual(local.ghi);
  });

  it('reads date and time apart, day first, decimal commas and twelve-hour clocks', () => {
    const heading = 'Datum;Time;Global irradiance [W/m2];DNI;DHI;Air temperature;Wind speed';
    const rows = tableRows().map((row, i) => {
      const { month, day, hour } = calendar[i];
      const clock = `${hour % 12 === 0 ? 12 : hour % 12}:00 ${hour < 12 ? 'AM' : 'PM'}`;
      const numbers = row.split(',').slice(1).join(';').replaceAll('.', ',');
      return `${two(day)}.${two(month)}.2023;${clock};${numbers}`;
    });
    const text = lines('Weather hut on the hill', '', heading, rows);
    expect(guessTable(text).layout).toMatchObject({
      headerLines: 3,
      delimiter: ';',
      decimal: ',',
      time: { kind: 'date-time', date: 0, time: 1, order: 'dmy' },
    });
    const year = readTypicalYear(text, { site });
    expect(Array.from(year.dryBulb)).toEqual(local.dryBulb);
  });

  it('reads month, day and hour in columns of their own, parted by blanks, with units below', () => {
    const heading = ['Year Month Day Hour GHI DNI DHI Tair WS', '- - - - kJ/m2 kJ/m2 kJ/m2 F mph'];
    const rows = calendar.map(({ month, day, hour }, i) => {
      const power = [local.ghi[i], local.dni[i], local.dhi[i]].map((v) => (v * 3.6).toFixed(1));
      const fahrenheit = (local.dryBulb[i] * 1.8 + 32).toFixed(3);
      const mph = (local.wind[i] / 0.44704).toFixed(4);
      return `  2023  ${month} ${day}  ${hour + 1} ${power.join('  ')} ${fahrenheit} ${mph}`;
    });
    const text = lines(heading, rows);
    const { layout: found, open } = guessTable(text);
    expect(found).toMatchObject({
      delimiter: ' ',
      headerLines: 2,
      time: { kind: 'parts', month: 1, day: 2, hour: 3 },
      stamp: 'end',
      columns: {
        ghi: { column: 4, unit: 'kJ/m2' },
        dryBulb: { column: 7, unit: 'F' },
        wind: { column: 8, unit: 'mph' },
      },
    });
    expect(open.stamp).toBe(false);
    const year = readTypicalYear(text, { site });
    // The text keeps 0.1 kJ/m2, 0.001 F and 0.0001 mph.
    expect(Math.max(...year.ghi.map((v, i) => Math.abs(v - local.ghi[i])))).toBeLessThan(0.02);
    expect(Math.max(...year.dryBulb.map((v, i) => Math.abs(v - local.dryBulb[i])))).toBeLessThan(
      1e-3,
    );
    expect(Math.max(...year.wind.map((v, i) => Math.abs(v - local.wind[i])))).toBeLessThan(1e-4);
  });

  it('counts rows that carry no time, with or without 29 February', () => {
    const rows = calendar.map(
      (_, i) => `${local.ghi[i]}\t${local.dni[i]}\t${local.dhi[i]}\t${local.dryBulb[i]}`,
    );
    const heading = 'GHI\tDNI\tDHI\tTemp';
    const leap = [...rows.slice(0, 1416), ...rows.slice(0, 24), ...rows.slice(1416)];
    for (const list of [rows, leap]) {
      const year = readTypicalYear(lines(heading, list), { site });
      expect(Array.from(year.ghi)).toEqual(local.ghi);
      expect(year.messages.map((m) => m.english).join(' ')).toMatch(
        /rows were counted from 1 January/,
      );
    }
    expect(() => readTypicalYear(lines(heading, rows.slice(5)), { site })).toThrow(
      /8,755 rows without a time/,
    );
  });

  it('takes the zone from a stamp or a heading', () => {
    const zoned = stamped((m, d, h) => `2023-${two(m)}-${two(d)} ${two(h)}:00-05:00`);
    expect(guessTable(lines(tableHeading, zoned)).layout.utcOffset).toBe(-5);
    const named = tableText().replace('time', 'time (UTC+5:30)');
    expect(guessTable(named).layout.utcOffset).toBe(5.5);
    expect(guessTable(tableText().replace('time', 'time GMT')).layout.utcOffset).toBe(0);
  });
});

describe('a preview', () => {
  it('shows columns, rows, year and checks', () => {
    const preview = previewTable(tableText(), undefined, site);
    expect(preview.layout).toMatchObject({ stamp: 'start', utcOffset: 'site' });
    expect(preview.columns[0]).toEqual({ index: 0, name: 'time', use: 'time' });
    expect(preview.columns[4]).toEqual({ index: 4, name: 'Temperature (C)', use: 'dryBulb' });
    expect(preview.rows).toHaveLength(12);
    expect(preview.rows[0][0]).toBe('2023-01-01 00:00');
    expect(preview.year?.ghi).toHaveLength(8760);
    expect(preview.checks.map((c) => c.id)).toEqual([
      'rows',
      'ranges',
      'gaps',
      'irradiance',
      'time',
      'night',
      'balance',
      'clearness',
    ]);
    expect(preview.checks.every((c) => c.level === 'ok' && c.sentence.english.endsWith('.'))).toBe(
      true,
    );
  });

  it('stops at the first check that fails and keeps the rows on show', () => {
    const text = lines(
      tableHeading,
      tableRows().filter((_, i) => i < 100 || i > 200),
    );
    const preview = previewTable(text, layout, site);
    expect(preview.year).toBeUndefined();
    expect(preview.rows).toHaveLength(12);
    expect(preview.checks).toHaveLength(1);
    expect(preview.checks[0]).toMatchObject({ id: 'rows', level: 'error' });
    expect(preview.checks[0].sentence.english).toMatch(/101 hours are missing/);
  });

  it('says what is wrong with a text that is no table, and with a missing place', () => {
    expect(previewTable('', undefined, site).checks[0]).toMatchObject({
      id: 'file',
      level: 'error',
    });
    const placeless = previewTable(tableText(), undefined, undefined);
    expect(placeless.checks[0].sentence.english).toMatch(/site: /);
    expect(placeless.columns).toHaveLength(6);
  });
});

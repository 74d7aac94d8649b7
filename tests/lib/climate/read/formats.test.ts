import { describe, expect, it } from 'vitest';
import { readTypicalYear } from '../../../../lib/climate/index.ts';
import type { TypicalYear } from '../../../../lib/climate/index.ts';
import { InputError } from '../../../../lib/problem/index.ts';
import type { InventedYear } from './synthetic.ts';
import {
  calendar,
  inventedSite,
  lines,
  localYear,
  pvgisHeading,
  pvgisLegend,
  pvgisRows,
  pvgisText,
  tmy3Columns,
  tmy3Heading,
  tmy3Rows,
  tmy3Text,
  utcYear,
} from './synthetic.ts';

const quantities = ['ghi', 'dni', 'dhi', 'dryBulb', 'wind'] as const;

/** The text holds the numbers as written here, so reading gives them back exactly. */
function expectSame(year: TypicalYear, invented: InventedYear, from = 0): void {
  for (const quantity of quantities) {
    const turned = [...invented[quantity].slice(from), ...invented[quantity].slice(0, from)];
    expect(Array.from(year[quantity]), quantity).toEqual(turned);
  }
}

describe('TMY3 text', () => {
  it('is read as local standard time with stamps at the end of the hour', () => {
    const year = readTypicalYear(tmy3Text());
    expectSame(year, localYear());
    expect(year.startUtc).toBe(5);
    expect(year).toMatchObject({ latitude: 44, longitude: -75, elevation: 120, messages: [] });
    expect(year.source).toMatchObject({ kind: 'tmy3', name: 'Somewhere Intl AP, NY' });
    expect(year.source.note.english).toContain('1991 to 2002');
  });

  const readAlike: [string, string][] = [
    ['a byte order mark', `\uFEFF${tmy3Text()}`],
    ['carriage returns and line feeds', tmy3Text().replaceAll('\n', '\r\n')],
    ['carriage returns alone', tmy3Text().replaceAll('\n', '\r')],
    ['no line end at the end', tmy3Text().trimEnd()],
    ['blank lines at the end', `${tmy3Text()}\n\n  \n`],
    ['semicolons', tmy3Text().replaceAll(',', ';')],
    ['semicolons and decimal commas', tmy3Text().replaceAll(',', ';').replaceAll('.', ',')],
    ['tabs', tmy3Text().replaceAll(',', '\t')],
    ['quoted fields', lines(tmy3Heading, tmy3Rows().map(quoted))],
    ['midnight written 24:00:00', tmy3Text().replaceAll(',24:00,', ',24:00:00,')],
  ];
  it.each(readAlike)('with %s is read the same', (_, text) => {
    expectSame(readTypicalYear(text), localYear());
  });

  it('fills short gaps by straight lines and tells their lines', () => {
    const rows = tmy3Rows().map((row, i) => {
      const cells = row.split(',');
      if (i >= 4090 && i < 4093) cells[tmy3Columns.ghi] = '-9900';
      if (i === 100 || i === 101) cells[tmy3Columns.dryBulb] = i === 100 ? '' : '99.9';
      return cells.join(',');
    });
    const year = readTypicalYear(lines(tmy3Heading, rows));
    const { ghi, dryBulb } = localYear();
    for (const k of [1, 2, 3]) {
      const line = ghi[4089] + ((ghi[4093] - ghi[4089]) * k) / 4;
      expect(year.ghi[4089 + k]).toBeCloseTo(line, 9); // arithmetic alone
    }
    expect(year.dryBulb[100]).toBeCloseTo(dryBulb[99] + (dryBulb[102] - dryBulb[99]) / 3, 9);
    expect(year.messages.map((m) => m.english).join(' ')).toMatch(
      /3 hours of global.*lines 4093 to 4095/,
    );
    expect(year.messages.map((m) => m.english).join(' ')).toMatch(
      /2 hours of dry-bulb.*lines 103 to 104/,
    );
  });

  it('fills up to three rows that are not there', () => {
    const year = readTypicalYear(
      lines(
        tmy3Heading,
        tmy3Rows().filter((_, i) => i < 5000 || i > 5002),
      ),
    );
    expect(year.ghi[5003]).toBe(localYear().ghi[5003]);
    expect(year.messages.map((m) => m.english).join(' ')).toMatch(
      /3 hours of global.*after line 5002/,
    );
  });

  it('fills a gap over the end of the year from both sides', () => {
    const rows = tmy3Rows().map((row, i) => {
      const cells = row.split(',');
      if (i === 0 || i === 8759) cells[tmy3Columns.dryBulb] = '';
      return cells.join(',');
    });
    const { dryBulb } = localYear();
    const year = readTypicalYear(lines(tmy3Heading, rows));
    const third = (dryBulb[1] - dryBulb[8758]) / 3;
    expect(year.dryBulb[8759]).toBeCloseTo(dryBulb[8758] + third, 9);
    expect(year.dryBulb[0]).toBeCloseTo(dryBulb[8758] + 2 * third, 9);
  });

  it('leaves out 29 February', () => {
    const rows = tmy3Rows();
    const march = calendar.findIndex((c) => c.month === 3);
    const leapDay = rows.slice(march, march + 24).map((r) => r.replace(/^3\/1\//, '2/29/'));
    const text = lines(tmy3Heading, rows.slice(0, march), leapDay, rows.slice(march));
    const year = readTypicalYear(text);
    expectSame(year, localYear());
    expect(year.messages.map((m) => m.english)).toEqual([
      '29 February was left out: a typical year has 8,760 hours.',
    ]);
  });

  it('takes readings a little below zero at night as zero', () => {
    const year = readTypicalYear(
      lines(
        tmy3Heading,
        tmy3Rows().map((r, i) => (i % 24 === 2 ? r.replace(',0,1,', ',-3,1,') : r)),
      ),
    );
    expect(year.ghi[2]).toBe(0);
    expect(year.messages.map((m) => m.english).join(' ')).toMatch(
      /365 irradiances a little below zero/,
    );
  });

  it('tells a wrong time zone by its minutes', () => {
    const messages = readTypicalYear(tmy3Text().replace(',-5,44', ',-6,44'))
      .messages.map((m) => m.english)
      .join(' ');
    const [, minutes, direction] = /runs (\d+) min (late|early)/.exec(messages) ?? [];
    expect(direction).toBe('late');
    // One hour by construction; 6 minutes is far less than any zone or convention is off by.
    expect(Math.abs(Number(minutes) - 60)).toBeLessThan(6);
  });
});

function quoted(row: string): string {
  return row
    .split(',')
    .map((cell) => `"${cell}"`)
    .join(',');
}

describe('PVGIS text', () => {
  it('is turned to the site, each hour centred on the stamp plus the time offset', () => {
    const year = readTypicalYear(pvgisText());
    // Rows are -0.5 + 0.2 h from each stamp; five hours of 44 N 75 W are still 31 December.
    expectSame(year, utcYear(), 5);
    expect(year.startUtc).toBeCloseTo(-0.3 + 5, 9);
    expect(Math.abs(year.startUtc - 5)).toBeLessThanOrEqual(0.5);
    expect(year.messages.map((m) => m.english)).toEqual([
      "5 hours from the start of the file stand at the end, so that the year starts at the site's midnight.",
    ]);
    expect(year.source.name).toBe('PVGIS 44 N, 75 W');
  });

  it('takes no minus zero from it', () => {
    expect(readTypicalYear(pvgisText()).dni.some((v) => Object.is(v, -0))).toBe(false);
  });

  it('takes the time zone of the site where one is given', () => {
    const site = { ...inventedSite, standardOffset: -6 };
    const year = readTypicalYear(pvgisText(), { site });
    expect(year.startUtc).toBeCloseTo(-0.3 + 6, 9);
    expectSame(year, utcYear(), 6);
  });

  it('of an older version has no time offset and no elevation', () => {
    const heading = pvgisHeading.filter((l) => !/Offset|Elevation/.test(l));
    const year = readTypicalYear(lines(heading, pvgisRows(), pvgisLegend));
    expect(year.startUtc).toBeCloseTo(-0.5 + 5, 9);
    expect(year.elevation).toBe(0);
    expect(year.messages.map((m) => m.english).join(' ')).toMatch(/no elevation/);
  });

  it('may be without its legend, and with minutes in its stamps', () => {
    // Stamps at 12 past with no offset line say the same as whole hours with an offset of 0.2 h.
    const rows = pvgisRows().map((r) => r.replace(/^(\d+:\d\d)00/, '$112'));
    const heading = pvgisHeading.filter((l) => !l.includes('Offset'));
    const year = readTypicalYear(lines(heading, rows));
    expectSame(year, utcYear(), 5);
    expect(year.startUtc).toBeCloseTo(4.7, 9);
  });
});

describe('a text that is neither', () => {
  it('needs a place', () => {
    const text = lines('time,GHI,DNI,DHI,Temp', [
      '2023-01-01 00:00,0,0,0,1',
      '2023-01-01 01:00,0,0,0,1',
    ]);
    expect(() => readTypicalYear(text)).toThrow(InputError);
    expect(() => readTypicalYear(text)).toThrow(/site: .*Give latitude, longitude and elevation/);
  });
});

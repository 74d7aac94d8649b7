import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { plainColour } from '../../../../src/app/parts/figure/colour.ts';
import { fileNameOf } from '../../../../src/app/parts/figure/download.ts';
import { xmlText } from '../../../../src/app/parts/figure/lettering.ts';
import { tableCsv } from '../../../../src/app/parts/figure/csv.ts';
import { cellText } from '../../../../src/app/parts/figure/table.ts';
import { Words } from '../../../../src/words/index.ts';
import type { FigureTable } from '../../../../src/app/parts/figure/table.ts';

const english = await Words.load('en', []);
const german = await Words.load('de', []);

const rows: (string | number)[][] = [
  ['West "door", left', 1234.567, 21],
  ['=HYPERLINK("http://x")', NaN, -3.456],
  ['-5 to 3', 0, 0.0001],
  ['@SUM(A1)\nsecond line', 1e6, 7],
];
const table: FigureTable = {
  columns: [
    { head: 'Opening' },
    { head: 'Gain (W/m²)', digits: 1 },
    { head: 'Air (°C)', digits: 2 },
  ],
  rowCount: rows.length,
  cell: (row, column) => rows[row][column],
};

describe('the data of a figure as CSV', () => {
  const parsed = Papa.parse<string[]>(tableCsv(table).trimEnd(), { skipEmptyLines: false }).data;

  it('comes back whole through a CSV reader', () => {
    expect(parsed[0]).toEqual(['Opening', 'Gain (W/m2)', 'Air (C)']);
    expect(parsed[1]).toEqual(['West "door", left', '1234.6', '21']);
    expect(parsed.length).toBe(5);
    expect(parsed[4][0]).toContain('\nsecond line');
  });

  it('leaves cells without a figure empty and keeps negative figures figures', () => {
    expect(parsed[2].slice(1)).toEqual(['', '-3.46']);
  });

  it('makes texts that a spreadsheet might run harmless, as OWASP has it', () => {
    for (const row of parsed.slice(1)) expect(row[0]).not.toMatch(/^[=+\-@\t\r\n]/);
    expect(parsed[2][0]).toBe('\'=HYPERLINK("http://x")');
    expect(parsed[3][0]).toBe("'-5 to 3");
  });
});

describe('the data of a figure on the page', () => {
  it('has the decimals of its column', () => {
    expect(cellText(english, table, 0, 1)).toBe('1,234.6');
    expect(cellText(english, table, 1, 1)).toBe('');
    expect(cellText(english, table, 2, 0)).toBe('-5 to 3');
    expect(cellText(german, table, 0, 1)).toBe('1.234,6');
    expect(cellText(german, table, 1, 2)).toBe('-3,46');
  });
});

describe('saved figures', () => {
  it('are named by their title in plain letters', () => {
    expect(fileNameOf('Solar gain: "West/door" <1>', 'svg')).toBe('solar-gain-west-door-1.svg');
    expect(fileNameOf('../../Größe', 'csv')).toBe('größe.csv');
    expect(fileNameOf('***', 'png')).toBe('figure.png');
    expect(fileNameOf('x'.repeat(300), 'png').length).toBe(84);
  });

  it('carry colours that every reader of SVG knows', () => {
    expect(plainColour('rgb(12, 95, 107)')).toEqual({ colour: '#0c5f6b', opacity: 1 });
    expect(plainColour('rgba(0, 0, 0, 0.25)')).toEqual({ colour: '#000000', opacity: 0.25 });
    expect(plainColour('none')).toEqual({ colour: 'none', opacity: 1 });
    const painted = () => [255, 128, 0, 51];
    expect(plainColour('oklch(70% 0.2 60)', painted)).toEqual({ colour: '#ff8000', opacity: 0.2 });
  });

  it('hold only characters that XML 1.0 allows', () => {
    // Char in XML 1.0 (5th ed. 2008), section 2.2: tab, line feed, return, and from space on.
    expect(xmlText('a\u0000b\u000bc\td\ne<&\ud83c\udf1e')).toBe('abc\td\ne<&\ud83c\udf1e');
  });
});

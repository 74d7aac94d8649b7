import { cellsWrong } from './brokenCells.ts';
import { withRows, withHeading } from './brokenParts.ts';
import type { BrokenText } from './brokenParts.ts';
import { rowsWrong } from './brokenRows.ts';
import {
  lines,
  pvgisHeading,
  pvgisRows,
  seeded,
  tableHeading,
  tableRows,
  tmy3Heading,
  tmy3Rows,
  tmy3Text,
} from './synthetic.ts';

export type { BrokenText } from './brokenParts.ts';

/**
 * Weather texts that must be refused with one clear problem each; the same every time. The tables
 * among them need a place: give `inventedSite` of ./synthetic.ts as `site` with all of them.
 */
export function brokenWeatherTexts(): BrokenText[] {
  return [...notText(), ...headings(), ...rowsWrong(), ...cellsWrong()];
}

function notText(): BrokenText[] {
  const chance = seeded(7);
  const bytes = (from: number) =>
    Array.from({ length: 3000 }, () =>
      String.fromCharCode(from + Math.floor(chance() * (256 - from))),
    ).join('');
  const page = `<!doctype html><html><head><title>Not found</title></head>\n<body><p>The file is not here.</p></body></html>\n`;
  return [
    { name: 'empty file', text: '', expect: /is empty.*Choose a file/ },
    { name: 'binary junk', text: bytes(0), expect: /not plain text.*Unpack/ },
    {
      name: 'two-byte text read as one-byte text',
      text: tmy3Text().slice(0, 5000).split('').join('\0'),
      expect: /not plain text.*UTF-8/,
    },
    {
      name: 'undecodable text',
      text: `Date\n${'\uFFFD\uFFFD,\uFFFD\n'.repeat(300)}`,
      expect: /not plain text/,
    },
    {
      name: 'one huge line',
      text: tmy3Text().replaceAll('\n', ' '),
      expect: /line 1: is too long.*line of its own/,
    },
    {
      name: 'a huge line in the middle',
      text: withRows((rows) => rows.map((r, i) => (i === 500 ? r.padEnd(30_000, '9') : r))),
      expect: /line 503: is too long/,
    },
    { name: 'web page instead of a file', text: page, expect: /not a table.*Choose another file/ },
    {
      name: 'object notation',
      text: JSON.stringify({ ghi: [1, 2, 3], temperature: [4, 5, 6] }, null, 2),
      expect: /not a table.*Choose another file/,
    },
  ];
}

function headings(): BrokenText[] {
  return [
    {
      name: 'TMY3 heading without rows',
      text: lines(tmy3Heading),
      expect: /heading but no rows.*Export/,
    },
    {
      name: 'TMY3 without the line about the station',
      text: lines(tmy3Heading[1], tmy3Rows()),
      expect: /line 1: .*station is missing/,
    },
    {
      name: 'station latitude in words',
      text: withHeading(',44,', ',north,'),
      expect: /line 1, latitude: .*"north".*-90 to 90/,
    },
    {
      name: 'station without hours from UTC',
      text: withHeading(',-5,44', ',,44'),
      expect: /line 1, hours from UTC/,
    },
    {
      name: 'TMY3 without global irradiance',
      text: withHeading('GHI (W/m^2)', 'GHI'),
      expect: /line 2: .*no column "GHI \(W\/m\^2\)"/,
    },
    {
      name: 'PVGIS without its latitude',
      text: lines(pvgisHeading.slice(1), pvgisRows()),
      expect: /no line "Latitude.*Put it back/,
    },
    {
      name: 'PVGIS with a time offset in words',
      text: lines(
        pvgisHeading.map((l) => l.replace('0.2', 'none')),
        pvgisRows(),
      ),
      expect: /line 4, Irradiance Time Offset: .*"none"/,
    },
    {
      name: 'PVGIS without direct irradiance',
      text: lines(
        pvgisHeading.map((l) => l.replace('Gb(n)', 'Gb(i)')),
        pvgisRows(),
      ),
      expect: /line 18: .*no column "Gb\(n\)"/,
    },
    {
      name: 'table without temperature',
      text: lines(tableHeading.replace('Temperature', 'Humidity'), tableRows()),
      expect: /columns: .*dry-bulb temperature.*Point at/,
    },
    {
      name: 'table without irradiance',
      text: lines('time,a,b,c,Temperature (C),Wind speed (m/s)', tableRows()),
      expect: /columns: .*irradiance.*Point at/,
    },
    {
      name: 'table with diffuse irradiance alone',
      text: lines(tableHeading.replace('Global', 'a').replace('Direct', 'b'), tableRows()),
      expect: /columns: .*irradiance.*Point at/,
    },
  ];
}

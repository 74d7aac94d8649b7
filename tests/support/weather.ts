import { existsSync, readFileSync } from 'node:fs';
import Papa from 'papaparse';

/** Folder of the public hourly files, beside the repository; absent on a fresh clone. */
const folder = new URL('../../../shared/weather/', import.meta.url);

export const weatherIsHere = existsSync(folder);

/** Said in the name of every test that is skipped without the files. */
export const weatherNote = weatherIsHere ? '' : ' (skipped: ../shared/weather is absent)';

export function weatherText(name: string): string {
  return readFileSync(new URL(name, folder), 'utf8');
}

export interface PlainWeather {
  latitude: number;
  longitude: number;
  startUtc: number;
  ghi: Float64Array;
  dni: Float64Array;
  dhi: Float64Array;
  dryBulb: Float64Array;
  wind: Float64Array;
}

/** The few columns the tests need of a TMY3 file, read without the program's own reader. */
export function plainTmy3(name: string): PlainWeather {
  const rows = Papa.parse<string[]>(weatherText(name), { skipEmptyLines: true }).data;
  const [head, names, ...hours] = rows;
  const column = (label: string) => {
    const i = names.indexOf(label);
    return Float64Array.from(hours, (row) => Number(row[i]));
  };
  return {
    latitude: Number(head[4]),
    longitude: Number(head[5]),
    startUtc: -Number(head[3]),
    ghi: column('GHI (W/m^2)'),
    dni: column('DNI (W/m^2)'),
    dhi: column('DHI (W/m^2)'),
    dryBulb: column('Dry-bulb (C)'),
    wind: column('Wspd (m/s)'),
  };
}

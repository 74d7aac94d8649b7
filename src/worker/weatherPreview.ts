import { previewFile, splitByErbs } from '../../lib/climate/index.ts';
import type { TypicalYear, WeatherSite } from '../../lib/climate/index.ts';
import type { HourlyFile, WeatherFacts, WeatherPreview } from './api.ts';

/** Reads an hourly text as the engine would, and sums up what it gives. */
export function previewWeather(file: HourlyFile, site: WeatherSite): WeatherPreview {
  const { text, table, fileName } = file;
  const { year, ...preview } = previewFile(text, table, site, { split: splitByErbs, fileName });
  return year ? { ...preview, year: factsOf(year) } : preview;
}

function factsOf(year: TypicalYear): WeatherFacts {
  const { source, latitude, longitude, elevation, messages } = year;
  const sum = (series: Float64Array) => series.reduce((total, value) => total + value, 0);
  return {
    name: source.name,
    note: source.note,
    latitude,
    longitude,
    elevation,
    ghi: sum(year.ghi) / 1000,
    dni: sum(year.dni) / 1000,
    dhi: sum(year.dhi) / 1000,
    coldest: year.dryBulb.reduce((a, b) => Math.min(a, b), Infinity),
    mean: sum(year.dryBulb) / year.dryBulb.length,
    warmest: year.dryBulb.reduce((a, b) => Math.max(a, b), -Infinity),
    wind: sum(year.wind) / year.wind.length,
    messages,
  };
}

import { getPosition } from 'suncalc';

/**
 * Invented weather for reading tests: a sun placed by suncalc, clear and cloudy days by a seeded
 * chance, temperatures and winds by simple waves. It says nothing about any real place.
 */
export interface InventedYear {
  latitude: number;
  longitude: number;
  startUtc: number;
  ghi: number[];
  dni: number[];
  dhi: number[];
  dryBulb: number[];
  wind: number[];
}

export const inventedSite = { latitude: 44, longitude: -75, elevation: 120, standardOffset: -5 };

const HOURS = 8760;
const SAMPLES = 6;
const monthDays = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** Seeded chance, 0 to 1 (mulberry32, public domain). */
export function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** Hourly means from `startUtc` on; the sun is that of 2026. */
export function inventYear(startUtc: number, seed = 1): InventedYear {
  const { latitude, longitude } = inventedSite;
  const chance = seeded(seed);
  const cloud = Array.from({ length: 366 }, () => (chance() < 0.4 ? 0 : chance()));
  const year: InventedYear = {
    latitude,
    longitude,
    startUtc,
    ghi: [],
    dni: [],
    dhi: [],
    dryBulb: [],
    wind: [],
  };
  for (let hour = 0; hour < HOURS; hour++) {
    const cover = cloud[Math.floor(hour / 24)];
    let dni = 0;
    let dhi = 0;
    let beam = 0;
    for (let k = 0; k < SAMPLES; k++) {
      const utc = startUtc + hour + (k + 0.5) / SAMPLES;
      const sun = getPosition(new Date(Date.UTC(2026, 0, 1) + utc * 3.6e6), latitude, longitude);
      const up = Math.sin((sun.altitude * Math.PI) / 180);
      if (up <= 0) continue;
      const normal = 950 * Math.exp(-0.14 / up) * (1 - cover);
      dni += normal / SAMPLES;
      beam += (normal * up) / SAMPLES;
      dhi += (up * (110 + 260 * cover * (1 - cover / 2))) / SAMPLES;
    }
    const day = hour / 24;
    year.dni.push(Math.round(dni));
    year.dhi.push(Math.round(dhi));
    year.ghi.push(Math.round(beam + dhi));
    const warmth = 9 - 14 * Math.cos((2 * Math.PI * (day - 20)) / 365);
    const swing = 5 * (1 - cover) * Math.cos((2 * Math.PI * ((hour % 24) - 15)) / 24);
    year.dryBulb.push(Number((warmth + swing + 3 * (chance() - 0.5)).toFixed(1)) + 0); // no minus zero
    year.wind.push(Number((1 + 5 * chance()).toFixed(1)));
  }
  return year;
}

/** Month, day and hour 0 to 23 of each hour of a year of 365 days. */
export const calendar: readonly { month: number; day: number; hour: number }[] = monthDays.flatMap(
  (days, m) =>
    Array.from({ length: days * 24 }, (_, h) => ({
      month: m + 1,
      day: Math.floor(h / 24) + 1,
      hour: h % 24,
    })),
);

export const two = (n: number): string => String(n).padStart(2, '0');

const local = inventYear(5);
const utc = inventYear(-0.5 + 0.2);

/** The year in local standard time, whole hours: what the TMY3 text and the tables hold. */
export function localYear(): InventedYear {
  return local;
}

/** The year of the PVGIS text: hours centred 12 minutes after each hour UTC. */
export function utcYear(): InventedYear {
  return utc;
}

export const tmy3Heading = [
  '726999,SOMEWHERE INTL AP,NY,-5,44,-75,120,,,,,,',
  'Date (MM/DD/YYYY),Time (HH:MM),ETR (W/m^2),GHI (W/m^2),GHI source,DNI (W/m^2),DNI source,DHI (W/m^2),DHI source,Dry-bulb (C),Dry-bulb source,Wspd (m/s),Wspd source',
];

/** Columns of the TMY3 text below. */
export const tmy3Columns = { date: 0, time: 1, ghi: 3, dni: 5, dhi: 7, dryBulb: 9, wind: 11 };

/** TMY3 rows, a shortened set of its columns; months from different years. */
const stationRows = calendar.map(({ month, day, hour }, i) => {
  const { ghi, dni, dhi, dryBulb, wind } = local;
  const date = `${month}/${day}/${1990 + month}`;
  return `${date},${hour + 1}:00,0,${ghi[i]},1,${dni[i]},1,${dhi[i]},1,${dryBulb[i]},A,${wind[i]},A`;
});

export function tmy3Rows(): string[] {
  return stationRows.slice();
}

export const pvgisHeading = [
  'Latitude (decimal degrees): 44.000',
  'Longitude (decimal degrees): -75.000',
  'Elevation (m): 120.0',
  'Irradiance Time Offset (h): 0.2',
  'month,year',
  ...monthDays.map((_, m) => `${m + 1},${2005 + m}`),
  'time(UTC),T2m,RH,G(h),Gb(n),Gd(h),IR(h),WS10m,WD10m,SP',
];

export const pvgisLegend = [
  '',
  'T2m: 2-m air temperature (degree Celsius)',
  'G(h): Global irradiance on the horizontal plane (W/m2)',
  '',
  'PVGIS (c) European Union, 2001-2025',
];

const gridRows = calendar.map(({ month, day, hour }, i) => {
  const { ghi, dni, dhi, dryBulb, wind } = utc;
  const stamp = `${2004 + month}${two(month)}${two(day)}:${two(hour)}00`;
  const zero = dni[i] === 0 ? '-0.0' : String(dni[i]);
  return `${stamp},${dryBulb[i]},80.0,${ghi[i]}.0,${zero},${dhi[i]}.0,300.0,${wind[i]},90.0,99000.0`;
});

export function pvgisRows(): string[] {
  return gridRows.slice();
}

/** Text of lines ended by line feeds. */
export function lines(...parts: (string | readonly string[])[]): string {
  return `${parts.flat().join('\n')}\n`;
}

export function tmy3Text(): string {
  return lines(tmy3Heading, tmy3Rows());
}

export function pvgisText(): string {
  return lines(pvgisHeading, pvgisRows(), pvgisLegend);
}

export const tableHeading =
  'time,Global horizontal (W/m2),Direct normal (W/m2),Diffuse horizontal (W/m2),Temperature (C),Wind speed (m/s)';

/** Rows of a plain table in local standard time, stamped at the start of the hour. */
const plainRows = calendar.map(({ month, day, hour }, i) => {
  const { ghi, dni, dhi, dryBulb, wind } = local;
  const stamp = `2023-${two(month)}-${two(day)} ${two(hour)}:00`;
  return `${stamp},${ghi[i]},${dni[i]},${dhi[i]},${dryBulb[i]},${wind[i]}`;
});

export function tableRows(): string[] {
  return plainRows.slice();
}

export function tableText(): string {
  return lines(tableHeading, tableRows());
}

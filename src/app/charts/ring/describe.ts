import { compassWord } from '../../../../lib/findings/index.ts';
import type { FigureTable } from '../../parts/figure/table.ts';
import { figure, measured, percent } from '../words.ts';
import { stoppedShare } from './layout.ts';
import type { RingOpening } from './layout.ts';
import type { SkyPlace } from './sunDay.ts';

/** Energy in the units of the page. */
export interface EnergyUnit {
  symbol: string;
  show(kWh: number): number;
}

/** Which way a plane faces, in words: `faces west, 270 degrees`. */
export function facing(azimuth: number, tilt = 90): string {
  if (tilt < 1) return 'faces the sky';
  return `faces ${compassWord(azimuth)} ${figure(azimuth)} degrees`;
}

/** What is known of an opening's summer sun. */
export function gainWords(opening: RingOpening, unit: EnergyUnit): string {
  if (opening.without === undefined) return 'summer gain not yet known';
  const stopped = stoppedShare(opening);
  const gain = `summer gain ${measured(unit.show(opening.without), 0, unit.symbol)} without shading`;
  return stopped === undefined ? gain : `${gain}, ${percent(stopped)} stopped`;
}

/** Where the sun stands at an hour, in words. */
export function sunWords(sun: SkyPlace, behindHills: boolean): string {
  const where = `${compassWord(sun.azimuth)}, ${figure(sun.azimuth)}°`;
  if (sun.altitude < 0) return `the sun is down`;
  const height = `the sun stands in the ${where}, ${figure(sun.altitude)}° high`;
  return behindHills ? `${height}, behind the horizon's hills or trees` : height;
}

export interface RingFacts {
  openings: readonly RingOpening[];
  unit: EnergyUnit;
  /** Date and clock of the chosen hour. */
  when: string;
  sun: SkyPlace;
  behindHills: boolean;
  /** Names of the openings whose plane the sun stands before. */
  sunny: readonly string[];
}

/** What the ring shows, in two or three sentences. */
export function describeRing(facts: RingFacts): string {
  const { openings, unit, when, sun, behindHills, sunny } = facts;
  const known = openings.filter((o) => o.without !== undefined);
  const first = `The plan as a dial, north up, with ${openings.length} ${openings.length === 1 ? 'opening' : 'openings'}.`;
  const top = known.reduce<RingOpening | undefined>(
    (best, o) => (best && best.without! >= o.without! ? best : o),
    undefined,
  );
  const most = top
    ? ` ${top.name} (${facing(top.azimuth, top.tilt)}) takes the most summer sun: ${gainWords(top, unit).replace('summer gain ', '')}.`
    : '';
  const light =
    sun.altitude < 0 || behindHills
      ? ''
      : sunny.length
        ? `, before ${listed(sunny)}`
        : ', before none of the openings';
  return `${first}${most} ${when}: ${sunWords(sun, behindHills)}${light}.`;
}

/** Names in a sentence; a long list is counted. */
export function listed(names: readonly string[]): string {
  if (names.length > 5) return `${names.length} of the openings`;
  return names.length > 1 ? `${names.slice(0, -1).join(', ')} and ${names.at(-1)}` : names[0];
}

/** The figures behind the ring. */
export function ringTable(
  openings: readonly RingOpening[],
  unit: EnergyUnit,
  length: { symbol: string; show(metres: number): number },
): FigureTable {
  const rows = openings.map((o) => [
    o.name,
    o.wallName,
    o.azimuth,
    o.tilt,
    length.show(o.width),
    o.without === undefined ? NaN : unit.show(o.without),
    o.with === undefined ? NaN : unit.show(o.with),
    (stoppedShare(o) ?? NaN) * 100,
  ]);
  return {
    columns: [
      { head: 'Opening' },
      { head: 'Wall' },
      { head: 'Azimuth, °' },
      { head: 'Tilt, °' },
      { head: `Width, ${length.symbol}`, digits: 3 },
      { head: `Summer without shading, ${unit.symbol}` },
      { head: `Summer with shading, ${unit.symbol}` },
      { head: 'Stopped, %' },
    ],
    rowCount: rows.length,
    cell: (row, column) => rows[row][column],
  };
}

/** A name cut to a number of letters. */
export function clip(name: string, letters: number): string {
  return name.length > letters ? `${name.slice(0, letters - 1).trimEnd()}…` : name;
}

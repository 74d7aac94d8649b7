import type { Wording } from '../../../words/index.ts';
import { compassName } from '../../parts/compass.ts';
import type { FigureTable } from '../../parts/figure/table.ts';
import { stoppedShare } from './layout.ts';
import type { RingOpening } from './layout.ts';
import type { SkyPlace } from './sunDay.ts';

/** Energy in the units of the page. */
export interface EnergyUnit {
  symbol: string;
  show(kWh: number): number;
}

/** Which way a plane faces: `faces west 270 degrees`, or `faces west 270°` in the short way. */
export function facingText(
  words: Wording,
  { azimuth, tilt }: Pick<RingOpening, 'azimuth' | 'tilt'>,
  way: 'spoken' | 'short' = 'spoken',
): string {
  const t = words.of('charts');
  if (tilt < 1) return t('ring.facing.sky');
  return t(`ring.facing.${way}`, {
    compass: compassName(words, azimuth),
    azimuth: words.figure(azimuth),
  });
}

/** What is known of an opening's summer sun. */
export function gainText(words: Wording, opening: RingOpening, unit: EnergyUnit): string {
  const t = words.of('charts');
  if (opening.without === undefined) return t('ring.gain.unknown');
  const figures = gainFigures(words, opening, unit);
  return t(figures.share === '' ? 'ring.gain.bare' : 'ring.gain.shaded', figures);
}

/** Gain without shading and the share that is stopped; no letters where that is not known. */
function gainFigures(words: Wording, opening: RingOpening, unit: EnergyUnit) {
  const stopped = stoppedShare(opening);
  return {
    gain: words.measured(unit.show(opening.without ?? NaN), 0, unit.symbol),
    share: stopped === undefined ? '' : words.share(stopped),
  };
}

/** Where the sun stands at an hour. */
export function sunText(words: Wording, sun: SkyPlace, behindHills: boolean): string {
  const t = words.of('charts');
  if (sun.altitude < 0) return t('ring.sun.down');
  return t(behindHills ? 'ring.sun.hidden' : 'ring.sun.up', {
    compass: compassName(words, sun.azimuth),
    azimuth: words.figure(sun.azimuth),
    altitude: words.figure(sun.altitude),
  });
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
export function describeRing(words: Wording, facts: RingFacts): string {
  const t = words.of('charts');
  const { openings, unit, when, sun, behindHills, sunny } = facts;
  const top = openings
    .filter((o) => o.without !== undefined)
    .reduce<RingOpening | undefined>(
      (best, o) => (best && best.without! >= o.without! ? best : o),
      undefined,
    );
  const now = { when, sun: sunText(words, sun, behindHills) };
  return [
    t('ring.about.house', { count: openings.length }),
    ...(top ? [mostText(words, top, unit)] : []),
    sun.altitude < 0 || behindHills
      ? t('ring.read', now)
      : sunny.length
        ? t('ring.about.lit', { ...now, openings: listed(words, sunny) })
        : t('ring.about.unlit', now),
  ].join(' ');
}

function mostText(words: Wording, top: RingOpening, unit: EnergyUnit): string {
  const figures = gainFigures(words, top, unit);
  return words.of('charts')(figures.share === '' ? 'ring.about.most' : 'ring.about.mostShaded', {
    name: top.name,
    facing: facingText(words, top),
    ...figures,
  });
}

/** Names in a sentence; a long list is counted. */
export function listed(words: Wording, names: readonly string[]): string {
  if (names.length <= 5) return words.list(names);
  return words.of('charts')('ring.some', { figure: words.figure(names.length) });
}

/** The figures behind the ring. */
export function ringTable(
  words: Wording,
  openings: readonly RingOpening[],
  unit: EnergyUnit,
  length: { symbol: string; show(metres: number): number },
): FigureTable {
  const t = words.of('charts');
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
      { head: t('ring.table.opening') },
      { head: t('ring.table.wall') },
      { head: t('ring.table.azimuth') },
      { head: t('ring.table.tilt') },
      { head: t('ring.table.width', { unit: length.symbol }), digits: 3 },
      { head: t('ring.table.without', { unit: unit.symbol }) },
      { head: t('ring.table.with', { unit: unit.symbol }) },
      { head: t('ring.table.stopped') },
    ],
    rowCount: rows.length,
    cell: (row, column) => rows[row][column],
  };
}

/** A name cut to a number of letters. */
export function clip(name: string, letters: number): string {
  return name.length > letters ? `${name.slice(0, letters - 1).trimEnd()}…` : name;
}

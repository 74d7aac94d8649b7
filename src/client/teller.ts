import type { TFunction } from 'i18next';
import { formatFeetInches, fromSI, unitOf } from '../../lib/units/index.ts';
import type { QuantityName, UnitSystem } from '../../lib/units/index.ts';
import type { LibraryPart, Words } from '../words/index.ts';

/** Words and figures of the client page in one language and one system of units. */
export class Teller {
  readonly t: TFunction<'client'>;
  private readonly common: TFunction<'common'>;

  constructor(
    readonly words: Words,
    readonly system: UnitSystem,
  ) {
    this.t = words.of('client');
    this.common = words.of('common');
  }

  /** A figure with its unit, from the engine's unit: `817 kWh`. */
  quantity(name: QuantityName, value: number, digits?: number): string {
    if (name === 'length' && this.system === 'imperial') return this.bare(name, value);
    return `${this.bare(name, value, digits)}\u00a0${kept(this.unit(name))}`;
  }

  /** The figure alone, in the shown unit. */
  bare(name: QuantityName, value: number, digits = unitOf(name, this.system).digits): string {
    if (name === 'length' && this.system === 'imperial') return kept(formatFeetInches(value));
    return this.words.number(fromSI(name, this.system, value), digits);
  }

  /** Unit of a quantity for a column head; lengths in feet and inches carry their own marks. */
  unit(name: QuantityName): string {
    if (name === 'length' && this.system === 'imperial') return 'ft, in';
    return unitOf(name, this.system).symbol;
  }

  /** Clear width by clear height. */
  size(width: number, height: number): string {
    if (this.system === 'imperial') {
      return kept(`${formatFeetInches(width)} × ${formatFeetInches(height)}`);
    }
    return kept(`${this.words.number(width * 1000)} × ${this.words.number(height * 1000)} mm`);
  }

  /** Height above the sea: whole metres or feet. */
  elevation(metres: number): string {
    const { symbol } = unitOf('length', this.system);
    return `${this.words.number(fromSI('length', this.system, metres))}\u00a0${symbol}`;
  }

  number(value: number, digits = 0): string {
    return this.words.number(value, digits);
  }

  /** A count of hours: `1 hour`, `817 hours`. */
  hours(count: number): string {
    return this.common('hours', { count, figure: this.words.number(count) });
  }

  /** What ships with the program by its id; the given words where it is the user's own. */
  named(part: LibraryPart, id: string, name: string): string {
    return this.words.named(part, id, name);
  }

  /** West 270°, as the page says it. */
  facing(azimuth: number): string {
    return `${this.compass(azimuth)} ${this.words.number(Math.round(azimuth))}°`;
  }

  compass(azimuth: number): string {
    return this.common(`compass.${POINTS[Math.round(wrap(azimuth) / 45) % 8]!}`);
  }
}

const POINTS = ['n', 'ne', 'e', 'se', 's', 'sw', 'w', 'nw'] as const;

/** Letters that stay on one line. */
function kept(letters: string): string {
  return letters.replace(/ /g, '\u00a0');
}

function wrap(azimuth: number): number {
  return ((azimuth % 360) + 360) % 360;
}

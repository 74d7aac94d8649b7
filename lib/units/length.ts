import { FOOT, INCH } from './factors.ts';
import { parseDecimal, parseMixed, plainText } from './number.ts';
import { findUnit, type UnitSystem } from './quantities.ts';
import { notUnderstood } from './refuse.ts';

const FEET = /^([\d.,]+) ?(?:'|ft|foot|feet) ?(?:-? ?([\d][\d.,/ -]*?) ?(?:"|in|inch|inches)?)?$/i;
const SHORTHAND = /^(\d+) ?- ?(\d[\d.,/ -]*?) ?"?$/;
const INCHES = /^([\d.,/ -]+?) ?(?:"|in|inch|inches)$/i;
const METRES = /^([\d.,]+) ?([a-z]+)$/i;

/** A comma, or a point before mm, that could part thousands: `2,040 mm`, `2.040 mm`. */
const UNCLEAR = /(?<![\d.,])[1-9]\d{0,2}(?:,\d{3}(?![\d.,])|\.\d{3} ?mm)/i;
/** Where both readings give the same length or only one is a building's: `1,250`, `1,250 m`. */
const CLEAR_ENOUGH = /^(?:\d,\d{3}|\d{1,2},\d{3} ?m)$/i;

/**
 * A length in metres as a person types it, in either system whatever the one chosen: `2.04 m`,
 * `2,04 m`, `204 cm`, `2040 mm`, `6' 8 1/2"`, `6-8`, `6 ft 8 in`, `80 1/2 in`, `80-1/2"`.
 * Without a unit: a fraction is inches; in imperial the number is inches (common practice for window
 * sizes); in metric it is metres below 10 and millimetres from 100, and refused between as unclear.
 * @throws InputError where the entry is not understood, negative, or could be read in two ways
 */
export function parseLength(text: string, system: UnitSystem = 'metric', path = 'length'): number {
  const plain = plainText(text);
  if (UNCLEAR.test(plain) && !(system === 'metric' && CLEAR_ENOUGH.test(plain))) {
    throw notUnderstood(path, text, 'length', 'separator');
  }
  const metres =
    readFeet(plain) ?? readInches(plain) ?? readMetric(plain) ?? readBare(plain, system);
  if (metres === undefined) throw notUnderstood(path, text, 'length');
  if (metres === 'unclear') throw notUnderstood(path, text, 'length', 'noUnit');
  return metres;
}

function readFeet(entry: string): number | undefined {
  const short = SHORTHAND.exec(entry);
  // `80-1/2` is eighty and a half, `6-8` six feet eight.
  const match = short && !/^\d+\/\d+$/.test(short[2]!) ? short : FEET.exec(entry);
  if (!match) return undefined;
  const feet = parseDecimal(match[1]!);
  const inches = match[2] === undefined ? 0 : parseMixed(match[2]);
  if (feet === undefined || inches === undefined || inches >= 12) return undefined;
  return feet * FOOT + inches * INCH;
}

function readInches(entry: string): number | undefined {
  const inches = parseMixed(INCHES.exec(entry)?.[1] ?? '');
  return inches === undefined ? undefined : inches * INCH;
}

function readMetric(entry: string): number | undefined {
  const [, figure, symbol] = METRES.exec(entry) ?? [];
  const value = parseDecimal(figure ?? '');
  return value === undefined ? undefined : findUnit('length', symbol!)?.toSI(value);
}

function readBare(entry: string, system: UnitSystem): number | 'unclear' | undefined {
  const value = parseMixed(entry);
  if (value === undefined) return undefined;
  if (system === 'imperial' || entry.includes('/')) return value * INCH;
  if (value < 10) return value;
  return value < 100 ? 'unclear' : value / 1000;
}

/** Feet and inches to the nearest sixteenth: 2.0447 m is `6' 8 1/2"`, 0.19 m is `7 1/2"`. */
export function formatFeetInches(metres: number): string {
  const sixteenths = Math.round((Math.abs(metres) / INCH) * 16);
  const feet = Math.floor(sixteenths / 192);
  const inches = Math.floor((sixteenths % 192) / 16);
  const fraction = fractionText(sixteenths % 16);
  const inchText = [inches || !fraction ? `${inches}` : '', fraction].filter(Boolean).join(' ');
  const sign = metres < 0 && sixteenths > 0 ? '-' : '';
  return `${sign}${feet ? `${feet}' ` : ''}${inchText}"`;
}

function fractionText(sixteenths: number): string {
  if (sixteenths === 0) return '';
  let over = sixteenths;
  let under = 16;
  while (over % 2 === 0) {
    over /= 2;
    under /= 2;
  }
  return `${over}/${under}`;
}

import { formatFeetInches, parseLength } from './length.ts';
import { commaIsUnclear, parseDecimal, plainText } from './number.ts';
import {
  findUnit,
  quantities,
  rFromU,
  uFromR,
  unitOf,
  type QuantityName,
  type UnitSystem,
} from './quantities.ts';
import { notUnderstood } from './refuse.ts';

const SPLIT = /^([+-]?[\d.,]+) ?(.*)$/;
const R_VALUE = /^r ?-? ?([\d.,]+)$/i;

/**
 * An entry such as `25 C`, `77 °F`, `0,6 W/m2K`, `R-9.5` or a bare number in the unit of the chosen
 * system, as the value the engine keeps. Lengths go to `parseLength`.
 * @throws InputError where it is not understood, with examples of what is
 */
export function parseQuantity(
  quantity: QuantityName,
  text: string,
  system: UnitSystem,
  path: string = quantity,
): number {
  if (quantity === 'length') return parseLength(text, system, path);
  const plain = plainText(text);
  const r = R_VALUE.exec(plain);
  if (r && (quantity === 'uValue' || quantity === 'resistance')) {
    const u = uFromR(figure(r[1]!));
    if (!(u > 0 && u < Infinity)) throw notUnderstood(path, text, quantity, 'rValue');
    return quantity === 'uValue' ? u : 1 / u;
  }
  const match = SPLIT.exec(plain);
  if (!match) throw notUnderstood(path, text, quantity);
  const unit = match[2] ? findUnit(quantity, match[2]) : quantities[quantity][system];
  if (!unit) throw notUnderstood(path, text, quantity, 'otherUnit', { unit: match[2]! });
  return unit.toSI(figure(match[1]!));

  function figure(entry: string): number {
    if (commaIsUnclear(entry)) throw notUnderstood(path, text, quantity, 'comma');
    const value = parseDecimal(entry);
    if (value === undefined) throw notUnderstood(path, text, quantity);
    return value;
  }
}

export interface FormatOptions {
  /** Decimals instead of the unit's own; for imperial lengths: decimal feet. */
  digits?: number;
  /** False leaves the unit out. */
  symbol?: boolean;
}

/**
 * A value of the engine as text in the chosen system, with its unit: `0.60 W/m²K`, `77.0 °F`,
 * `6' 8 1/2"`. Imperial lengths are feet and inches unless decimals are asked for.
 */
export function formatQuantity(
  quantity: QuantityName,
  value: number,
  system: UnitSystem,
  options: FormatOptions = {},
): string {
  const { digits, symbol = true } = options;
  if (quantity === 'length' && system === 'imperial' && digits === undefined) {
    return formatFeetInches(value);
  }
  const unit = unitOf(quantity, system);
  const figure = unit.fromSI(value).toFixed(digits ?? unit.digits);
  const clean = /^-0(\.0*)?$/.test(figure) ? figure.slice(1) : figure;
  return symbol ? `${clean} ${unit.symbol}` : clean;
}

/** A U-value in W/m2K as the R its data sheet may give instead: `R 9.5`. */
export function formatR(u: number): string {
  return `R ${rFromU(u).toFixed(1)}`;
}

/**
 * Factors to SI, from Thompson & Taylor, Guide for the Use of the International System of Units,
 * NIST SP 811 (2008), appendix B. Exact definitions are used and the rest is derived from them, so
 * that pairs of conversions undo each other.
 */

/** m; exact. */
export const FOOT = 0.3048;
/** m; exact. */
export const INCH = 0.0254;
/** m/s; exact. */
export const MILE_PER_HOUR = 0.44704;
/** m/s; exact. */
export const KILOMETRE_PER_HOUR = 1 / 3.6;
/** J, the International Table Btu: 1 Btu/(lb F) is 4186.8 J/(kg K), the pound 0.45359237 kg. */
export const BTU = (4186.8 * 0.45359237) / 1.8;

/** m2; exact. */
export const SQUARE_FOOT = FOOT * FOOT;
/** m3/h. */
export const CUBIC_FOOT_PER_MINUTE = FOOT ** 3 * 60;
/** K, size of one Fahrenheit degree; exact. */
export const FAHRENHEIT_DEGREE = 5 / 9;
/** W. */
export const BTU_PER_HOUR = BTU / 3600;
/** W/m2. */
export const BTU_PER_HOUR_SQUARE_FOOT = BTU_PER_HOUR / SQUARE_FOOT;
/** W/(m2 K). */
export const BTU_PER_HOUR_SQUARE_FOOT_FAHRENHEIT = BTU_PER_HOUR_SQUARE_FOOT / FAHRENHEIT_DEGREE;
/** W/(m K). */
export const BTU_PER_HOUR_FOOT_FAHRENHEIT = BTU_PER_HOUR / FOOT / FAHRENHEIT_DEGREE;
/** kWh. */
export const KILO_BTU = (1000 * BTU) / 3.6e6;
/** kWh/m2. */
export const KILO_BTU_PER_SQUARE_FOOT = KILO_BTU / SQUARE_FOOT;

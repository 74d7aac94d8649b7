export { fromSI, quantities, rFromU, toSI, uFromR, unitOf } from './quantities.ts';
export type { Quantity, QuantityName, Unit, UnitSystem } from './quantities.ts';
export { formatFeetInches, parseLength } from './length.ts';
export { formatQuantity, formatR, parseQuantity } from './entry.ts';
export type { FormatOptions } from './entry.ts';

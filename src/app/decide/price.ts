/** A price as it was typed, with a decimal point or comma; undefined where it is none above 0. */
export function priceOf(text: string): number | undefined {
  if (!/^\d{1,9}([.,]\d{1,4})?$/.test(text)) return undefined;
  const price = Number(text.replace(',', '.'));
  return price > 0 ? price : undefined;
}

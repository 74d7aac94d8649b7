/** A price as it was typed, with a decimal point or comma; undefined where it is none from 0.01 on. */
export function priceOf(text: string): number | undefined {
  if (!/^\d{1,7}([.,]\d{1,4})?$/.test(text)) return undefined;
  const price = Number(text.replace(',', '.'));
  return price >= 0.01 ? price : undefined;
}

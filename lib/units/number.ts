const VULGAR: Record<string, string> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

/** Brings typographic quotes, primes, minus signs, fractions and spaces to their plain forms. */
export function plainText(text: string): string {
  return text
    .replace(/[½¼¾⅛⅜⅝⅞]/g, (c) => ` ${VULGAR[c]}`)
    .replace(/[‘’′]/g, "'")
    .replace(/[“”″]|''/g, '"')
    .replace(/[−–]/g, '-')
    .replace(/\s+/g, ' ')
    .trim();
}

/** A decimal number with point or comma; undefined where the text is not one. */
export function parseDecimal(text: string): number | undefined {
  if (!/^[+-]?(\d+([.,]\d*)?|[.,]\d+)$/.test(text)) return undefined;
  return Number(text.replace(',', '.'));
}

/** Whether a comma could as well part thousands: `1,085`, but not `0,085` or `1,08`. */
export function commaIsUnclear(text: string): boolean {
  return /^[+-]?[1-9]\d{0,2},\d{3}$/.test(text);
}

/** An inch figure as people write it: `8`, `8.5`, `1/2`, `8 1/2`, `8-1/2`; undefined otherwise. */
export function parseMixed(text: string): number | undefined {
  const match = /^(?:(\d+)[ -])?(\d+)\/(\d+)$/.exec(text);
  if (!match) return /^[+-]/.test(text) ? undefined : parseDecimal(text);
  const [whole, over, under] = match.slice(1).map((part) => Number(part ?? 0)) as [
    number,
    number,
    number,
  ];
  return over < under ? whole + over / under : undefined;
}

/** Where a tab notes what it has open, for its own reload. */
const OPEN = 'shadewright.open';
const EXAMPLE = 'example ';

/** What a tab has open: an example as it ships, or a kept project. */
export type Open = { example: string } | { kept: string };

export function remember(open: Open): void {
  try {
    sessionStorage.setItem(OPEN, 'kept' in open ? open.kept : EXAMPLE + open.example);
  } catch {
    // Storage is off: a reload opens what was saved last.
  }
}

export function recall(): Open | undefined {
  try {
    const mark = sessionStorage.getItem(OPEN);
    if (mark === null) return undefined;
    return mark.startsWith(EXAMPLE) ? { example: mark.slice(EXAMPLE.length) } : { kept: mark };
  } catch {
    return undefined;
  }
}

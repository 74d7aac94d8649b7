/** The known word nearest to a mistyped one, or undefined when none is near enough to suggest. */
export function nearest(word: string, known: readonly string[]): string | undefined {
  const typed = word.slice(0, 80).toLowerCase();
  let best: string | undefined;
  let least = Infinity;
  for (const candidate of known) {
    const distance = editDistance(typed, candidate.toLowerCase());
    if (distance < least) {
      least = distance;
      best = candidate;
    }
  }
  return least <= Math.max(1, Math.floor(typed.length / 3)) ? best : undefined;
}

/**
 * Letters to add, drop, change or swap with their neighbour to turn one word into the other: the
 * string correction of Wagner & Fischer (1974) with swaps of neighbours, each letter moved once.
 */
export function editDistance(a: string, b: string): number {
  let before: number[] = [];
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = row[j - 1] + (a[i - 1] === b[j - 1] ? 0 : 1);
      let least = Math.min(change, row[j] + 1, next[j - 1] + 1);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        least = Math.min(least, before[j - 2] + 1);
      }
      next.push(least);
    }
    before = row;
    row = next;
  }
  return row[b.length];
}

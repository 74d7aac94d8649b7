/** Longest name the project file allows. */
const MOST = 120;

/**
 * A name for a copy that no other project has: `House (copy)`, `House (copy 2)` ...
 * @param word what a copy is called in the language of the page
 */
export function copyName(name: string, word: string, taken: Iterable<string> = []): string {
  const used = new Set(taken);
  const base = name.replace(new RegExp(` \\(${word}( \\d+)?\\)$`), '');
  for (let n = 1; ; n++) {
    const tail = n === 1 ? ` (${word})` : ` (${word} ${n})`;
    const copy = base.slice(0, MOST - tail.length) + tail;
    if (!used.has(copy)) return copy;
  }
}

/** A file name that no other file of the project has: `site.csv`, `site (2).csv` ... */
export function freeFileName(fileName: string, taken: Iterable<string> = []): string {
  const used = new Set(taken);
  const plain = fileName.trim() || 'weather';
  const [, stem, ending] = /^(.*?)(\.[^.]{1,12})?$/s.exec(plain)!;
  for (let n = 1; ; n++) {
    const tail = `${n === 1 ? '' : ` (${n})`}${ending ?? ''}`;
    const free = stem.slice(0, MOST - tail.length) + tail;
    if (!used.has(free)) return free;
  }
}

/** An id that no other project has. */
export function newId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(12));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
}

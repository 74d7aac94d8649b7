/** A value filled into a sentence; numbers are written in the manner of the language. */
export type TextValue = string | number | Text;

/**
 * A sentence of the engine: its place in the language files, what is filled in, and the English for
 * whoever has no language files at hand.
 */
export interface Text {
  /** The language file: `problems`. */
  file: string;
  /** The place in it: `room.area.none`. */
  key: string;
  values?: Record<string, TextValue>;
  /** Sentences told one after another; they stand in for a place of their own. */
  parts?: readonly Text[];
  /** Written in the manner of the language instead of a place of its own. */
  written?: Written;
  english: string;
}

/** A whole number with its thousands set apart, letters with a decimal point, or a month, 1 to 12. */
export type Written = { figure: number } | { decimal: string } | { month: number };

/** A language file: sentences in a tree. */
export interface Book {
  [key: string]: string | Book;
}

type PluralEnd = '_one' | '_other';
type Bare<K extends string> = K extends `${infer Stem}${PluralEnd}` ? Stem : K;

/** The places of a language file: `room.area.none`; plurals without their ending. */
export type TextKey<B> = {
  [K in keyof B & string]: B[K] extends string ? Bare<K> : `${K}.${TextKey<B[K]>}`;
}[keyof B & string];

/** Makes sentences of one language file. */
export type Say<B> = (key: TextKey<B>, values?: Record<string, TextValue>) => Text;

const plural = new Intl.PluralRules('en');

/**
 * The way to make sentences of a language file: `say('area.none', { name })`.
 *
 * Placeholders are `{{name}}`. Where the file has a key with `_one` and `_other`, `count` chooses.
 * @throws Error where the file has no such sentence
 */
export function sayFrom<const B extends object>(file: string, book: B): Say<B> {
  return (key, values) => {
    const count = values?.count;
    const template =
      sentenceAt(book as Book, key) ??
      sentenceAt(book as Book, `${key}_${plural.select(typeof count === 'number' ? count : 0)}`);
    if (template === undefined) throw new Error(`The file ${file} has no sentence ${key}.`);
    return { file, key, ...(values && { values }), english: fill(template, values) };
  };
}

/** Text of the user, a name or letters of a file, which is the same in every language. */
export function verbatim(letters: string): Text {
  return { file: '', key: '', english: letters };
}

/** A whole number with its thousands set apart: `8,760`. */
export function figureText(value: number): Text {
  const figure = Math.round(value);
  const english = String(figure).replace(/\B(?=(\d{3})+$)/g, ',');
  return { file: '', key: '', written: { figure }, english };
}

/** A figure with a fixed count of decimals: `0.50`. */
export function decimalText(value: number, digits: number): Text {
  const decimal = value.toFixed(digits);
  return { file: '', key: '', written: { decimal }, english: decimal };
}

/** The name of a month, 1 to 12: `January`. */
export function monthText(month: number): Text {
  const format = new Intl.DateTimeFormat('en', { month: 'long', timeZone: 'UTC' });
  const english = format.format(Date.UTC(2001, month - 1, 1));
  return { file: '', key: '', written: { month }, english };
}

/** Sentences one after another. */
export function inTurn(...parts: readonly Text[]): Text {
  return { file: '', key: '', parts, english: parts.map((part) => part.english).join(' ') };
}

/** Puts values into their places. */
function fill(template: string, values: Readonly<Record<string, TextValue>> = {}): string {
  return template.replace(/\{\{(\w+)\}\}/g, (hole, name: string) =>
    name in values ? plainValue(values[name]!) : hole,
  );
}

function plainValue(value: TextValue): string {
  return typeof value === 'object' ? value.english : String(value);
}

function sentenceAt(book: Book, key: string): string | undefined {
  let here: string | Book | undefined = book;
  for (const part of key.split('.')) {
    here = typeof here === 'object' && Object.hasOwn(here, part) ? here[part] : undefined;
  }
  return typeof here === 'string' ? here : undefined;
}

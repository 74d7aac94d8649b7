import { createInstance } from 'i18next';
import type { TFunction, i18n } from 'i18next';
import type { Text, TextValue, Written } from '../../lib/problem/index.ts';
import { formatQuantity } from '../../lib/units/index.ts';
import type { FormatOptions, QuantityName, UnitSystem } from '../../lib/units/index.ts';
import { loadWords } from './namespaces.ts';
import type { Language, Namespace, Namespaces } from './namespaces.ts';

/** Lists of what ships with the program: its names and where its figures are from. */
export type LibraryPart = Exclude<keyof Namespaces['library'], 'caution'>;

/** What tells things in the language of the page. */
export interface Wording {
  readonly language: Language;
  /** The words of one part that was loaded: `words.of('decide')('title', { name })`. */
  of<N extends Namespace>(namespace: N): TFunction<N>;
  /** A sentence of the engine; in English where its language file is not loaded. */
  text(text: Text): string;
  /** What ships with the program, by its id; the given name where it is the user's own. */
  named(part: LibraryPart, id: string, name: string): string;
  /** A number as it is written in the language; `digits` after the decimal sign. */
  number(value: number, digits?: number): string;
  /** The same with a minus sign, and a dash where there is no figure. */
  figure(value: number, digits?: number): string;
  /** A figure and its unit, which no line break parts. */
  measured(value: number, digits: number, symbol: string): string;
  /** A value of the engine with its unit, as `formatQuantity` has it. */
  quantity(name: QuantityName, value: number, system: UnitSystem, options?: FormatOptions): string;
  /** Letters with a decimal point, such as a fixed count of decimals, in the manner of the language. */
  decimal(letters: string): string;
  /** A share from 0 to 1 in per cent, without a space in English. */
  percent(share: number, digits?: number): string;
  /** A share from 0 to 1 as a figure with its unit: `79 %`. */
  share(share: number, digits?: number): string;
  /** A day without its year, from `MM-DD`: 15 September. */
  day(monthDay: string): string;
  /** Names of the twelve months. */
  months(width?: 'long' | 'short'): string[];
  /** Names of the seven days, Monday first. */
  weekdays(width?: 'long' | 'short'): string[];
  /** Things after one another: a, b and c. */
  list(things: readonly string[]): string;
}

declare module 'i18next' {
  interface CustomTypeOptions {
    defaultNS: 'common';
    resources: Namespaces;
  }
}

/** What the engine tells by `Text`, with the English in it. */
const ENGINE_FILES = ['entry', 'fields', 'problems', 'weather'] as const;

/** Words, numbers and dates in one language. */
export class Words implements Wording {
  readonly #formats = new Map<number, Intl.NumberFormat>();

  private constructor(
    readonly language: Language,
    private readonly i18n: i18n,
  ) {}

  /**
   * The words of some parts in a language.
   *
   * Placeholders are `{{name}}`; plurals `_one` and `_other` go by `count`. Nothing is escaped, as
   * the words are put in text nodes only.
   */
  static async load(language: Language, namespaces: readonly Namespace[]): Promise<Words> {
    const instance = createInstance();
    await instance.init({
      lng: language,
      fallbackLng: false,
      ns: [],
      defaultNS: 'common',
      resources: {},
      interpolation: { escapeValue: false },
      returnNull: false,
    });
    const words = new Words(language, instance);
    await words.need(['common', ...namespaces]);
    return words;
  }

  /** Loads parts that are not there yet; what the engine says comes with a language not its own. */
  async need(namespaces: readonly Namespace[]): Promise<void> {
    const needed = new Set([...namespaces, ...(this.language === 'en' ? [] : ENGINE_FILES)]);
    const missing = [...needed].filter((ns) => !this.i18n.hasResourceBundle(this.language, ns));
    const loaded = await Promise.all(missing.map((ns) => loadWords(this.language, ns)));
    missing.forEach((ns, i) => this.i18n.addResourceBundle(this.language, ns, loaded[i]!));
  }

  of<N extends Namespace>(namespace: N): TFunction<N> {
    return this.i18n.getFixedT(this.language, namespace) as TFunction<N>;
  }

  text(text: Text): string {
    if (this.language === 'en') return text.english;
    if (text.written) return this.#written(text.written);
    if (text.parts) return text.parts.map((part) => this.text(part)).join(' ');
    if (text.file === '' || !this.i18n.hasResourceBundle(this.language, text.file)) {
      return text.english;
    }
    const values = Object.entries(text.values ?? {}).map(([name, value]) => [
      name,
      // What goes by number needs it as such.
      name === 'count' ? value : this.#value(value),
    ]);
    const look = this.i18n.getFixedT(this.language, text.file as Namespace) as unknown as (
      key: string,
      options: object,
    ) => string;
    return look(text.key, { ...Object.fromEntries(values), defaultValue: text.english });
  }

  named(part: LibraryPart, id: string, name: string): string {
    const found: unknown = this.i18n.getResource(this.language, 'library', `${part}.${id}`);
    return typeof found === 'string' ? found : name;
  }

  #written(written: Written): string {
    if ('figure' in written) return this.number(written.figure);
    if ('decimal' in written) return this.decimal(written.decimal);
    return this.months('long')[written.month - 1]!;
  }

  #value(value: TextValue): string {
    if (typeof value === 'number') return this.decimal(String(value));
    return typeof value === 'string' ? value : this.text(value);
  }

  figure(value: number, digits = 0): string {
    if (!Number.isFinite(value)) return '–';
    return this.number(value, digits).replace('-', '−');
  }

  measured(value: number, digits: number, symbol: string): string {
    return `${this.figure(value, digits)}\u00a0${symbol}`;
  }

  quantity(name: QuantityName, value: number, system: UnitSystem, options?: FormatOptions): string {
    return this.decimal(formatQuantity(name, value, system, options));
  }

  decimal(letters: string): string {
    return this.language === 'en' ? letters : letters.replace(/(\d)\.(?=\d)/g, '$1,');
  }

  number(value: number, digits = 0): string {
    let format = this.#formats.get(digits);
    if (!format) {
      format = new Intl.NumberFormat(this.language, {
        minimumFractionDigits: digits,
        maximumFractionDigits: digits,
      });
      this.#formats.set(digits, format);
    }
    const rounded = Number(value.toFixed(digits));
    return format.format(rounded === 0 ? 0 : rounded);
  }

  percent(share: number, digits = 0): string {
    return new Intl.NumberFormat(this.language, {
      style: 'percent',
      minimumFractionDigits: digits,
      maximumFractionDigits: digits,
    }).format(share);
  }

  share(share: number, digits = 0): string {
    return this.measured(share * 100, digits, '%');
  }

  day(monthDay: string): string {
    const [month, day] = monthDay.split('-').map(Number);
    const date = new Date(Date.UTC(2001, month! - 1, day));
    return new Intl.DateTimeFormat(this.language === 'en' ? 'en-GB' : this.language, {
      day: 'numeric',
      month: 'long',
      timeZone: 'UTC',
    }).format(date);
  }

  months(width: 'long' | 'short' = 'short'): string[] {
    const format = new Intl.DateTimeFormat(this.language, { month: width, timeZone: 'UTC' });
    return Array.from({ length: 12 }, (_, i) => format.format(new Date(Date.UTC(2001, i, 15))));
  }

  weekdays(width: 'long' | 'short' = 'short'): string[] {
    const format = new Intl.DateTimeFormat(this.language, { weekday: width, timeZone: 'UTC' });
    // 1 January 2001 was a Monday.
    return Array.from({ length: 7 }, (_, i) => format.format(new Date(Date.UTC(2001, 0, 1 + i))));
  }

  list(things: readonly string[]): string {
    return new Intl.ListFormat(this.language === 'en' ? 'en-GB' : this.language, {
      type: 'conjunction',
    }).format(things);
  }
}

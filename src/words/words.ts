import { createInstance } from 'i18next';
import type { TFunction, i18n } from 'i18next';
import { wordFiles } from './namespaces.ts';
import type { Language, Namespace, Namespaces } from './namespaces.ts';

declare module 'i18next' {
  interface CustomTypeOptions {
    defaultNS: 'common';
    resources: Namespaces;
  }
}

/** Words, numbers and dates in one language. */
export class Words {
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

  /** Loads parts that are not there yet. */
  async need(namespaces: readonly Namespace[]): Promise<void> {
    const missing = namespaces.filter((ns) => !this.i18n.hasResourceBundle(this.language, ns));
    const loaded = await Promise.all(missing.map((ns) => wordFiles[ns][this.language]()));
    missing.forEach((ns, i) => this.i18n.addResourceBundle(this.language, ns, loaded[i]!.default));
  }

  /** The words of one part: `words.of('report')('title', { name })`. */
  of<N extends Namespace>(namespace: N): TFunction<N> {
    return this.i18n.getFixedT(this.language, namespace) as TFunction<N>;
  }

  /** A number as it is written in the language; `digits` after the decimal sign. */
  number(value: number, digits = 0): string {
    const rounded = Number(value.toFixed(digits));
    return new Intl.NumberFormat(this.language, {
      minimumFractionDigits: digits,
      maximumFractionDigits: digits,
    }).format(rounded === 0 ? 0 : rounded);
  }

  /** A share from 0 to 1 in per cent. */
  percent(share: number, digits = 0): string {
    return new Intl.NumberFormat(this.language, {
      style: 'percent',
      minimumFractionDigits: digits,
      maximumFractionDigits: digits,
    }).format(share);
  }

  /** A day without its year, from `MM-DD`: 15 September. */
  day(monthDay: string): string {
    const [month, day] = monthDay.split('-').map(Number);
    const date = new Date(Date.UTC(2001, month! - 1, day));
    return new Intl.DateTimeFormat(this.language === 'en' ? 'en-GB' : this.language, {
      day: 'numeric',
      month: 'long',
      timeZone: 'UTC',
    }).format(date);
  }

  /** Names of the twelve months. */
  months(width: 'long' | 'short' = 'short'): string[] {
    const format = new Intl.DateTimeFormat(this.language, { month: width, timeZone: 'UTC' });
    return Array.from({ length: 12 }, (_, i) => format.format(new Date(Date.UTC(2001, i, 15))));
  }

  /** Things after one another: a, b and c. */
  list(things: readonly string[]): string {
    return new Intl.ListFormat(this.language === 'en' ? 'en-GB' : this.language, {
      type: 'conjunction',
    }).format(things);
  }
}

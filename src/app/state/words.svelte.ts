import type { Language, Namespace, Words } from '../../words/index.ts';

/**
 * The words of the page in the chosen language. What is read from it in a template or an effect is
 * read again when the language changes; the words before stay until the new ones are loaded. Nothing
 * is loaded before the first part is needed.
 */
export class WordsState {
  #now = $state.raw<Words>();
  #loaded = $state.raw<ReadonlySet<Namespace>>(new Set());
  readonly #needed = new Set<Namespace>();
  #wanted: Language = 'en';

  /** Language of the words on screen. */
  get language(): Language {
    return this.#now?.language ?? 'en';
  }

  /** Changes the language, once its words are there. */
  show(language: Language): Promise<void> {
    this.#wanted = language;
    return this.#needed.size > 0 ? this.#load() : Promise.resolve();
  }

  /** Loads some parts in the language on screen, and in each one after it. */
  need(namespaces: readonly Namespace[]): Promise<void> {
    for (const namespace of ['common' as const, ...namespaces]) this.#needed.add(namespace);
    return this.#load();
  }

  /** Whether the words of a part can be read yet. */
  has(namespace: Namespace): boolean {
    return this.#loaded.has(namespace);
  }

  /** The words of one part that was loaded: `words.of('decide')('title')`. */
  of<N extends Namespace>(namespace: N) {
    return this.#words.of(namespace);
  }

  /** A number as it is written in the language; `digits` after the decimal sign. */
  number(value: number, digits = 0): string {
    return this.#words.number(value, digits);
  }

  /** A share from 0 to 1 in per cent. */
  percent(share: number, digits = 0): string {
    return this.#words.percent(share, digits);
  }

  /** A day without its year, from `MM-DD`. */
  day(monthDay: string): string {
    return this.#words.day(monthDay);
  }

  /** Names of the twelve months. */
  months(width: 'long' | 'short' = 'short'): string[] {
    return this.#words.months(width);
  }

  /** Things after one another: a, b and c. */
  list(things: readonly string[]): string {
    return this.#words.list(things);
  }

  get #words(): Words {
    if (!this.#now) throw new Error('No words are loaded yet.');
    return this.#now;
  }

  async #load(): Promise<void> {
    const language = this.#wanted;
    const needed = [...this.#needed];
    const { Words } = await import('../../words/index.ts');
    const words = this.#now?.language === language ? this.#now : await Words.load(language, needed);
    await words.need(needed);
    // Another language was chosen meanwhile: that choice loads its own.
    if (language !== this.#wanted) return this.#load();
    this.#now = words;
    this.#loaded = new Set([...this.#loaded, ...needed]);
  }
}

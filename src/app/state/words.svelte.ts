import type { Text } from '../../../lib/problem/index.ts';
import type { Language, Namespace, Wording, Words } from '../../words/index.ts';

/**
 * The words of the page in the chosen language. What is read from it in a template or an effect is
 * read again when the language changes; the words before stay until the new ones are loaded. Nothing
 * is loaded before the first part is needed. What `Wording` asks for throws before that.
 */
export class WordsState implements Wording {
  #now = $state.raw<Words>();
  #loaded = $state.raw<ReadonlySet<Namespace>>(new Set());
  readonly #needed = new Set<Namespace>();
  #wanted: Language;

  constructor(language: Language) {
    this.#wanted = language;
  }

  /** Language of the words on screen. */
  get language(): Language {
    return this.#now?.language ?? 'en';
  }

  /** Changes the language, once its words are there; where they do not come, it stays as it was. */
  async show(language: Language): Promise<void> {
    this.#wanted = language;
    if (this.#needed.size === 0) return;
    try {
      await this.#load();
    } catch (error) {
      if (this.#now && this.#wanted === language) this.#wanted = this.#now.language;
      throw error;
    }
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

  of<N extends Namespace>(namespace: N) {
    return this.#words.of(namespace);
  }

  text(text: Text): string {
    return this.#words.text(text);
  }

  named(...given: Parameters<Wording['named']>): string {
    return this.#words.named(...given);
  }

  number(value: number, digits?: number): string {
    return this.#words.number(value, digits);
  }

  figure(value: number, digits?: number): string {
    return this.#words.figure(value, digits);
  }

  measured(value: number, digits: number, symbol: string): string {
    return this.#words.measured(value, digits, symbol);
  }

  quantity(...given: Parameters<Wording['quantity']>): string {
    return this.#words.quantity(...given);
  }

  decimal(letters: string): string {
    return this.#words.decimal(letters);
  }

  percent(share: number, digits?: number): string {
    return this.#words.percent(share, digits);
  }

  share(share: number, digits?: number): string {
    return this.#words.share(share, digits);
  }

  day(monthDay: string): string {
    return this.#words.day(monthDay);
  }

  months(width?: 'long' | 'short'): string[] {
    return this.#words.months(width);
  }

  weekdays(width?: 'long' | 'short'): string[] {
    return this.#words.weekdays(width);
  }

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
    // Words that came first stay and take in what they lack.
    if (this.#now?.language === language) await this.#now.need(needed);
    else this.#now = words;
    this.#loaded = new Set([...this.#loaded, ...needed]);
  }
}

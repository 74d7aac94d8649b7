/**
 * Knows whether a field holds words that were typed but not taken yet: there the browser's own
 * undo is the one that is wanted.
 */
export class Typing {
  #field: EventTarget | null = null;

  /** Hears a page's input events. @returns what stops it */
  listen(page: Document): () => void {
    const typed = (event: Event) => (this.#field = event.target);
    const taken = () => (this.#field = null);
    const keys = (event: KeyboardEvent) => {
      if (event.key === 'Escape' || event.key === 'Enter') taken();
    };
    page.addEventListener('input', typed, true);
    page.addEventListener('change', taken, true);
    page.addEventListener('focusin', taken, true);
    page.addEventListener('keydown', keys, true);
    return () => {
      page.removeEventListener('input', typed, true);
      page.removeEventListener('change', taken, true);
      page.removeEventListener('focusin', taken, true);
      page.removeEventListener('keydown', keys, true);
    };
  }

  /** Whether an event comes from a field with words not taken yet. */
  in(target: EventTarget | null): boolean {
    return target !== null && target === this.#field && isTextField(target);
  }
}

function isTextField(target: EventTarget): boolean {
  const { tagName, type } = target as HTMLInputElement;
  return (
    tagName === 'TEXTAREA' ||
    (tagName === 'INPUT' && !['checkbox', 'radio', 'range', 'color', 'file'].includes(type))
  );
}

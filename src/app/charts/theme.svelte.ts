import { createSubscriber } from 'svelte/reactivity';

/**
 * Makes the effect or template that calls it run again when the page's colours change: by the
 * user's choice, by the system's, or because the page goes to paper.
 */
export const followTheme = createSubscriber((update) => {
  const root = new MutationObserver(update);
  root.observe(document.documentElement, { attributeFilter: ['data-theme', 'class', 'style'] });
  const media = ['(prefers-color-scheme: dark)', 'print'].map((query) => matchMedia(query));
  for (const list of media) list.addEventListener('change', update);
  return () => {
    root.disconnect();
    for (const list of media) list.removeEventListener('change', update);
  };
});

/** Values of custom properties as they stand at an element: `['--ink']`. */
export function cssColours(element: Element, names: readonly string[]): string[] {
  const style = getComputedStyle(element);
  return names.map((name) => style.getPropertyValue(name).trim());
}

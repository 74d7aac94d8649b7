import type { Page } from 'playwright-core';

/**
 * Words that English cannot do without and German does not have. Between letters, digits and the
 * marks of ids and addresses nothing is found.
 */
const ENGLISH =
  'the of and with from to is are was were be been for by at or if it its this that these those ' +
  'there than then when where which what who how why not no yes on off into onto over under up ' +
  'down out about above below after before between only each every both more most less least ' +
  'other has have had does do can cannot may must should will would needs need very too still yet ' +
  'without within while as an add delete remove rename save open close show hide choose pick take ' +
  'move copy undo redo load stop start turn set keep use year years month months week day days ' +
  'hour hours minutes room rooms house wall walls window windows door doors opening openings glass ' +
  'blinds blind shading schedule schedules facade facades heat heating cooling summer cold hot low ' +
  'high light dark width height depth thickness area weight colour figures table north south east ' +
  'head sill frame slats fabric awning shutter lowered raised outside inside indoor outdoor ' +
  'sun sunlit sunny sky clear cloudy wind shade shaded rules rule people floor ceiling roof ' +
  'warmest coldest limit share sum total mean average highest lowest';

const WORD = new RegExp(
  `(?<![\\p{L}\\p{N}_/.-])(${ENGLISH.split(' ').join('|')})(?![\\p{L}\\p{N}_/-])`,
  'giu',
);

/** Spellings that German has too: `Not`, `Start`, `Will` ... as nouns, `was`, `will`, `an` as words. */
const GERMAN_TOO = /^(NO|Not|Start|Stop|Was|Wind|Will|An|Am|Do|was|will|an|am|do)$/;

/** Names of places are the same in every language. */
const PLACES = /\b(North|South) (Dakota|Carolina)\b|\b(Port of Spain|Isle of Man)\b/g;

/** Every text and spoken attribute of the page, apart from what is marked as not to be translated. */
export async function wordsOnScreen(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const found = new Set<string>();
    const kept = (element: Element | null) =>
      element?.closest('[translate="no"], [lang="en"], script, style, noscript') ?? null;
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const text = node.textContent!.replace(/\s+/g, ' ').trim();
      if (text && !kept(node.parentElement)) found.add(text);
    }
    const spoken = [
      'aria-label',
      'aria-description',
      'aria-roledescription',
      'aria-valuetext',
      'title',
      'alt',
      'placeholder',
    ];
    for (const name of spoken) {
      for (const element of document.body.querySelectorAll(`[${name}]`)) {
        const text = element.getAttribute(name)!.trim();
        if (text && !kept(element)) found.add(`${name}: ${text}`);
      }
    }
    return [...found];
  });
}

/** The texts that have English words in them, with these words. */
export function english(texts: readonly string[]): string[] {
  return texts.flatMap((text) => {
    const words = [
      ...text
        .replace(/^[a-z-]+: /, '')
        .replace(PLACES, '')
        .matchAll(WORD),
    ]
      .map(([word]) => word)
      .filter((word) => !GERMAN_TOO.test(word));
    return words.length > 0 ? [`${text.slice(0, 160)} [${[...new Set(words)].join(', ')}]`] : [];
  });
}

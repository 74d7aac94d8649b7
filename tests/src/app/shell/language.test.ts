import { describe, expect, it } from 'vitest';
import { localeOf } from '../../../../src/app/shell/locale.ts';
import { spoken } from '../../../../src/app/state/languages.ts';

describe('the language of a first visit', () => {
  it.each([
    [['de-AT', 'en'], 'de'],
    [['fr-CH', 'de', 'en'], 'de'],
    [['en-GB', 'de'], 'en'],
    [['den', 'fr'], 'en'],
    [[], 'en'],
  ] as const)('is the first of the browser that the page speaks: %j', (preferred, language) => {
    expect(spoken(preferred)).toBe(language);
  });
});

describe('dates and times', () => {
  it('go by the variant of the language that the user reads', () => {
    expect(localeOf('en', ['de-AT', 'en-GB', 'en-US'])).toBe('en-GB');
    expect(localeOf('de', ['de-AT', 'en-GB'])).toBe('de-AT');
    expect(localeOf('de', ['fr'])).toBe('de');
  });
});

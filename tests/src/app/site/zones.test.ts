import { describe, expect, it } from 'vitest';
import { zoneChoices } from '../../../../src/app/site/zones.ts';
import { Words } from '../../../../src/words/index.ts';

const english = await Words.load('en', ['site']);
const german = await Words.load('de', ['site']);

describe('the choice of time zones', () => {
  const choiceOf = (words: Words, zone: string) =>
    zoneChoices(words, 'Europe/Vienna').find(({ value }) => value === zone);

  it('names zones by area and city', () => {
    expect(choiceOf(english, 'Europe/Vienna')).toMatchObject({ text: 'Vienna', group: 'Europe' });
    expect(choiceOf(german, 'Europe/Vienna')).toMatchObject({ text: 'Wien', group: 'Europa' });
    // Most cities have one name in both languages.
    expect(choiceOf(german, 'America/New_York')).toMatchObject({
      text: 'New York',
      group: 'Amerika',
    });
  });

  it('is the same list in every language, each area in the order of its letters', () => {
    const zones = (words: Words) => zoneChoices(words, 'Europe/Vienna').map(({ value }) => value);
    expect(zones(german).sort()).toEqual(zones(english).sort());
    const europe = zoneChoices(german, 'Europe/Vienna').filter(({ group }) => group === 'Europa');
    const names = europe.map(({ text }) => text);
    expect(names).toEqual([...names].sort(new Intl.Collator('de').compare));
    expect(names.indexOf('Wien')).toBeGreaterThan(names.indexOf('Warschau'));
  });

  it('holds the zone in use even where the browser has none of that name', () => {
    const zone = 'Europe/Old_Town';
    expect(choiceOf(german, zone)).toBeUndefined();
    expect(zoneChoices(german, zone)).toContainEqual({
      value: zone,
      text: 'Old Town',
      group: 'Europa',
    });
  });

  it('names only cities that some browser knows', () => {
    // Both names of zones that were renamed; the browsers of one day know one of each.
    const renamed = ['Asmera', 'Calcutta', 'Kolkata', 'Katmandu', 'Rangoon', 'Faeroe', 'Faroe'];
    const known = new Set([
      ...Intl.supportedValuesOf('timeZone').map((zone) => zone.split('/').at(-1)),
      ...renamed,
      ...['Kiev', 'Kyiv'],
    ]);
    const { city } = english.of('site')('zone', { returnObjects: true }) as {
      city: Record<string, string>;
    };
    expect(Object.keys(city).filter((name) => !known.has(name))).toEqual([]);
    for (const [key, name] of Object.entries(city)) expect(name).toBe(key.replaceAll('_', ' '));
  });
});

import type { Wording } from '../../words/index.ts';

interface ZoneChoice {
  value: string;
  text: string;
  group: string;
}

/** Time zones the browser knows, with the one in use even where it is not among them. */
export function zoneChoices(words: Wording, inUse: string): ZoneChoice[] {
  const known = Intl.supportedValuesOf('timeZone');
  const all = known.includes(inUse) ? known : [...known, inUse];
  const { compare } = new Intl.Collator(words.language);
  const choices = all.map((zone) => choiceOf(words, zone));
  const areas = [...new Set(choices.map(({ group }) => group))];
  return choices.sort(
    (a, b) => areas.indexOf(a.group) - areas.indexOf(b.group) || compare(a.text, b.text),
  );
}

function choiceOf(words: Wording, zone: string): ZoneChoice {
  // Any area or city may come; the language files name those that are called otherwise there.
  const named = words.of('site') as unknown as (
    key: string,
    options: { defaultValue: string },
  ) => string;
  const name = (kind: 'area' | 'city', part: string) =>
    named(`zone.${kind}.${part}`, { defaultValue: part.replaceAll('_', ' ') });
  const [area, ...rest] = zone.split('/');
  const parts = rest.length > 0 ? rest : [zone];
  return {
    value: zone,
    text: parts.map((part) => name('city', part)).join(', '),
    group: name('area', rest.length > 0 ? area : 'Other'),
  };
}

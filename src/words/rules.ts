import { scheduleWordsFrom } from '../../lib/schedule/index.ts';
import type { SayRule, ScheduleWords } from '../../lib/schedule/index.ts';
import { searchWordsFrom } from '../../lib/search/index.ts';
import type { SearchWords } from '../../lib/search/index.ts';
import type { Wording } from './words.ts';

/** The words schedules are told in, in the language of the page; needs its part `rules`. */
export function scheduleWords(words: Wording): ScheduleWords {
  return scheduleWordsFrom(sayRule(words), {
    // English shortens the months of a rule; short German months are of uneven length.
    months: words.months(words.language === 'en' ? 'short' : 'long'),
    weekdays: words.weekdays(),
    list: (things) => words.list(things),
    decimal: (figure) => words.decimal(figure),
  });
}

/** The words a schedule's card is written in; needs the part `rules`. */
export function cardWords(words: Wording): SearchWords {
  const manner = {
    months: words.months('long'),
    decimal: (figure: string) => words.decimal(figure),
  };
  return searchWordsFrom(sayRule(words), manner, scheduleWords(words));
}

function sayRule(words: Wording): SayRule {
  const t = words.of('rules') as unknown as SayRule;
  return (key, values) => t(key, values);
}

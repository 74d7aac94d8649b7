import type { Project } from '../../lib/project/index.ts';
import { english, scheduleWordsFrom } from '../../lib/schedule/index.ts';
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

/** A plan whose schedules that the engine brought along are named in the language of the page. */
export function inOwnWords(words: Wording, plan: Project): Project {
  const schedules = plan.schedules.map((schedule) => ({
    ...schedule,
    name: scheduleName(words, schedule.name),
  }));
  return { ...plan, schedules };
}

/** The name of a schedule: one that the engine brought along in the language of the page. */
export function scheduleName(words: Wording, name: string): string {
  const { stock } = scheduleWords(words);
  if (name === english.stock.sun) return stock.sun;
  return name === english.stock.season ? stock.season : name;
}

function sayRule(words: Wording): SayRule {
  const t = words.of('rules') as unknown as SayRule;
  return (key, values) => t(key, values);
}

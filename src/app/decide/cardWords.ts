import type { SearchWords } from '../../../lib/search/index.ts';
import type { Words } from '../../words/index.ts';

/** The words that a schedule's card is written in, in the language of the page. */
export function cardWords(words: Pick<Words, 'of' | 'months' | 'language'>): SearchWords {
  const t = words.of('decide');
  // Figures come with a decimal point.
  const own = (at: string) => (words.language === 'de' ? at.replace('.', ',') : at);
  return {
    months: words.months('long'),
    date: (day, month) => t('card.date', { day, month }),
    season: (from, to) => t('card.season', { from, to }),
    allYear: t('card.allYear'),
    heading: (season, name) => t('card.heading', { season, name }),
    line: (heading, action) => t('card.line', { heading, action }),
    dayAndNight: t('card.dayAndNight'),
    clock: (down, up) => t('card.clock', { down, up }),
    clockNextDay: (down, up) => t('card.clockNextDay', { down, up }),
    sun: (at) => t('card.sun', { at: own(at) }),
    room: (at) => t('card.room', { at: own(at) }),
    down: (at, up) => t('card.down', { at, up }),
    slats: (at, up) => t('card.slats', { at, up }),
    both: (sun, room) => t('card.both', { sun, room }),
    either: (sun, room) => t('card.either', { sun, room }),
    pause: (minutes) => t('card.pause', { minutes }),
    alwaysUp: (name) => t('card.alwaysUp', { name }),
  };
}

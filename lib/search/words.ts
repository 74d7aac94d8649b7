import { englishManner, englishRules, english as englishSchedules } from '../schedule/index.ts';
import type { RuleManner, SayRule, ScheduleWords } from '../schedule/index.ts';
import type { FamilyId } from './types.ts';

/** Every word of the plain lines, from the language file `rules`. */
export function searchWordsFrom(
  say: SayRule,
  { months, decimal }: Pick<RuleManner, 'months' | 'decimal'>,
  /** Rules of forms that no search gives are told in these. */
  schedules: ScheduleWords,
) {
  return {
    months,
    decimal,
    schedules,
    date: (day: number, month: string) => say('date', { day, month }),
    season: (from: string, to: string) => say('span', { from, to }),
    allYear: say('allYear'),
    /** The days and the target before what is done. */
    heading: (season: string, name: string) => say('card.heading', { season, name }),
    line: (heading: string, action: string) => say('card.line', { heading, action }),
    dayAndNight: say('card.dayAndNight'),
    clock: (down: string, up: string) => say('card.clock', { down, up }),
    clockNextDay: (down: string, up: string) => say('card.clockNextDay', { down, up }),
    /** Readings with their unit. */
    sun: (value: string) => say('card.sun', { value }),
    room: (value: string) => say('card.room', { value }),
    down: (at: string, up: string) => say('card.down', { at, up }),
    slats: (at: string, up: string) => say('card.slats', { at, up }),
    both: (sun: string, room: string) => say('card.both', { sun, room }),
    either: (sun: string, room: string) => say('card.either', { sun, room }),
    pause: (minutes: number) => say('card.pause', { minutes }),
    alwaysUp: (name: string) => say('card.alwaysUp', { name }),
  };
}

export type SearchWords = ReturnType<typeof searchWordsFrom>;

/** The words of the lines where no others are given. */
export const searchWords: SearchWords = searchWordsFrom(
  englishRules(),
  englishManner('long'),
  englishSchedules,
);

/** Names of the kinds of schedule in tables of findings, which are in English. */
export const familyWords: Record<FamilyId, string> = {
  timer: 'timer',
  irradiance: 'sun on the facade',
  tracking: 'slats following the sun',
  room: 'room temperature',
  roomSun: 'room temperature and sun',
};

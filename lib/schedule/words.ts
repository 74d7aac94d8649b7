import rules from '../../data/words/en/rules.json' with { type: 'json' };
import { sayFrom } from '../problem/index.ts';
import type { TextKey } from '../problem/index.ts';

/** Tells a sentence of the language file `rules`. */
export type SayRule = (
  key: TextKey<typeof rules>,
  values?: Record<string, string | number>,
) => string;

/** What a language writes of itself beside the sentences. */
export interface RuleManner {
  /** Names of the twelve months, and of the seven days from Monday on. */
  months: readonly string[];
  weekdays: readonly string[];
  /** Things after one another: a, b and c. */
  list(things: readonly string[]): string;
  /** A figure that has a decimal point. */
  decimal(figure: string): string;
}

/** Ready-made schedules by their place in the language file. */
export type PresetKey = keyof typeof rules.preset;

/** Every word that schedules are told in, from a language file. */
export function scheduleWordsFrom(say: SayRule, { months, weekdays, list, decimal }: RuleManner) {
  return {
    months,
    weekdays,
    decimal,
    date: (day: number, month: string) => say('date', { day, month }),
    span: (from: string, to: string) => say('span', { from, to }),
    weekdaySpan: (from: string, to: string) => say('weekdaySpan', { from, to }),
    /** Months or weekdays, spans among them. */
    days: (parts: string[]) => parts.join(', '),
    monthsWithin: (months: string, dates: string) => say('monthsWithin', { months, dates }),
    /** Conditions that must all hold. */
    all: (parts: string[]) => list(parts),

    allYear: say('allYear'),
    noTime: say('noTime'),
    paintedHours: say('paintedHours'),
    /** The days before what happens on them. */
    heading: (parts: string[]) => {
      const text = parts.join(', ');
      return text.charAt(0).toUpperCase() + text.slice(1);
    },
    /** Hours and conditions are empty where there are none. */
    sentence: (heading: string, action: string, hours: string, conditions: string) => {
      const values = { heading, action, hours, conditions };
      if (hours) return say(conditions ? 'sentence.hoursWhen' : 'sentence.hours', values);
      return say(conditions ? 'sentence.when' : 'sentence.always', values);
    },

    raised: say('raised'),
    down: (percent?: string) => (percent ? say('down.share', { percent }) : say('down.all')),
    slatsAt: (angle: string, percent?: string) =>
      percent ? say('down.shareSlats', { percent, angle }) : say('down.slats', { angle }),
    slatsFollow: (percent?: string) =>
      percent ? say('down.shareTrack', { percent }) : say('down.track'),

    hours: (from: string, to: string) => say('hours', { from, to }),
    hoursIntoNextDay: (from: string, to: string) => say('hoursIntoNextDay', { from, to }),
    allDay: say('allDay'),
    spansOfDay: (spans: string[]) =>
      spans.slice(1).reduce((before, next) => say('both', { before, next }), spans[0] ?? ''),
    hoursOfMonths: (months: string, hours: string) =>
      months ? say('hoursOfMonths', { months, hours }) : hours,
    painted: (parts: string[]) => parts.join('; '),

    sunOn: say('sunOn'),
    sunOff: say('sunOff'),
    /** Readings beside `sunOn` speak of the sun, alone of the facade. */
    sunGives: (range: string) => say('sunGives', { range }),
    facadeGets: (range: string) => say('facadeGets', { range }),
    outdoors: (range: string) => say('outdoors', { range }),
    roomIs: (range: string) => say('roomIs', { range }),
    orMore: (at: string, release: string) => say('orMore', { at, release }),
    orLess: (at: string, release: string) => say('orLess', { at, release }),

    firstDecides: say('firstDecides'),
    raisedOtherwise: say('raisedOtherwise'),
    raisedAllYear: say('raisedAllYear'),
    pause: (minutes: string) => say('pause', { minutes }),

    /** Names of the schedules that measures and searches bring along. */
    stock: { sun: say('stock.sun'), season: say('stock.season') },
    /** What a ready-made schedule is for, what it costs, and where its values come from. */
    preset: (id: PresetKey) => ({
      name: say(`preset.${id}.name`),
      purpose: say(`preset.${id}.purpose`),
      note: say(`preset.${id}.note`),
    }),
  };
}

export type ScheduleWords = ReturnType<typeof scheduleWordsFrom>;

/** The sentences in English, for whoever has no language files at hand. */
export function englishRules(): SayRule {
  const say = sayFrom('rules', rules);
  return (key, values) => say(key, values).english;
}

/** How English writes the rest; months in the width asked for. */
export function englishManner(width: 'short' | 'long'): RuleManner {
  const names = (count: number, options: Intl.DateTimeFormatOptions) => {
    const format = new Intl.DateTimeFormat('en', { ...options, timeZone: 'UTC' });
    // 1 January 2001 was a Monday.
    return Array.from({ length: count }, (_, i) =>
      format.format(options.month ? Date.UTC(2001, i, 1) : Date.UTC(2001, 0, 1 + i)),
    );
  };
  const list = new Intl.ListFormat('en-GB', { type: 'conjunction' });
  return {
    months: names(12, { month: width }),
    weekdays: names(7, { weekday: 'short' }),
    list: (things) => list.format(things),
    decimal: (figure) => figure,
  };
}

/** The words schedules are told in where no others are given. */
export const english: ScheduleWords = scheduleWordsFrom(englishRules(), englishManner('short'));

import { english } from '../../lib/schedule/index.ts';
import type { ScheduleWords } from '../../lib/schedule/index.ts';
import type { Words } from '../words/index.ts';

/** The words schedules are told in, in the language of the page. */
export function scheduleWords(words: Words): ScheduleWords {
  if (words.language === 'en') return english;
  const t = words.of('client');
  return {
    ...english,
    months: words.months('long'),
    weekdays: t('schedule.weekdays').split(' '),
    date: (day, month) => t('schedule.date', { day, month }),
    span: (from, to) => t('schedule.span', { from, to }),
    monthsWithin: (months, dates) => t('schedule.monthsWithin', { months, dates }),
    all: (parts) => words.list(parts),
    allYear: t('schedule.allYear'),
    noTime: t('schedule.noTime'),
    paintedHours: t('schedule.paintedHours'),
    sentence: (heading, action, hours, conditions) =>
      `${heading}: ${action}${hours && ` ${hours}`}${conditions && t('schedule.when', { conditions })}.`,
    raised: t('schedule.raised'),
    down: (share, slats) => `${t('schedule.down')}${share && ` ${share}`}${slats && ` ${slats}`}`,
    share: (percent) => t('schedule.share', { percent }),
    slatsAt: (angle) => t('schedule.slatsAt', { angle }),
    slatsFollow: t('schedule.slatsFollow'),
    hours: (from, to) => t('schedule.hours', { from, to }),
    hoursIntoNextDay: (from, to) => t('schedule.hoursIntoNextDay', { from, to }),
    allDay: t('schedule.allDay'),
    spansOfDay: (spans) => words.list(spans),
    hoursOfMonths: (months, hours) =>
      months ? t('schedule.hoursOfMonths', { months, hours }) : hours,
    sunOn: t('schedule.sunOn'),
    sunOff: t('schedule.sunOff'),
    sunGives: (range) => t('schedule.sunGives', { range }),
    facadeGets: (range) => t('schedule.facadeGets', { range }),
    outdoors: (range) => t('schedule.outdoors', { range }),
    roomIs: (range) => t('schedule.roomIs', { range }),
    orMore: (at, release) => t('schedule.orMore', { at: decimal(at), release: decimal(release) }),
    orLess: (at, release) => t('schedule.orLess', { at: decimal(at), release: decimal(release) }),
    firstDecides: t('schedule.firstDecides'),
    raisedOtherwise: t('schedule.raisedOtherwise'),
    raisedAllYear: t('schedule.raisedAllYear'),
    pause: (minutes) => t('schedule.pause', { minutes }),
  };
}

/** The decimal sign of the languages other than English that there are. */
const decimal = (figure: string) => figure.replace('.', ',');

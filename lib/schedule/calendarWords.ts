import type { ScheduleLanguage } from './language.ts';

export function listOf(texts: readonly string[], language: ScheduleLanguage): string {
  return new Intl.ListFormat(language.locale, { type: 'conjunction' }).format(texts);
}

export function dateText(monthDay: string, language: ScheduleLanguage): string {
  const [month, day] = monthDay.split('-').map(Number);
  return language.date(day, monthName(month, language));
}

function monthName(month: number, { locale }: ScheduleLanguage): string {
  const format = new Intl.DateTimeFormat(locale, { month: 'short', timeZone: 'UTC' });
  return format.format(Date.UTC(2024, month - 1, 1));
}

function weekdayName(weekday: number, { locale }: ScheduleLanguage): string {
  const format = new Intl.DateTimeFormat(locale, { weekday: 'short', timeZone: 'UTC' });
  return format.format(Date.UTC(2024, 0, weekday)); // 1 January 2024 is a Monday
}

export function monthsText(months: readonly number[], language: ScheduleLanguage): string {
  const texts = runsOf(months, 12).map((run) =>
    run.length > 1
      ? [language.span(monthName(run[0], language), monthName(run.at(-1)!, language))]
      : [monthName(run[0], language)],
  );
  return listOf(texts.flat(), language);
}

export function weekdaysText(weekdays: readonly number[], language: ScheduleLanguage): string {
  const texts = runsOf(weekdays, 7).flatMap((run) =>
    run.length > 2
      ? [language.dayRange(weekdayName(run[0], language), weekdayName(run.at(-1)!, language))]
      : run.map((day) => weekdayName(day, language)),
  );
  return language.dayList(texts);
}

/** Numbers 1 to `count` in runs without a gap, where 1 follows on `count`. */
function runsOf(numbers: readonly number[], count: number): number[][] {
  const runs: number[][] = [];
  for (let n = 1; n <= count; n++) {
    if (!numbers.includes(n)) continue;
    if (runs.at(-1)?.at(-1) === n - 1) runs.at(-1)!.push(n);
    else runs.push([n]);
  }
  const last = runs.at(-1);
  if (runs.length > 1 && runs[0][0] === 1 && last?.at(-1) === count) {
    return [...runs.slice(1, -1), [...last, ...runs[0]]];
  }
  return runs;
}

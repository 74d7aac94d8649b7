import { formatQuantity } from '../units/index.ts';
import type { UnitSystem } from '../units/index.ts';
import { MINUTES_PER_QUARTER, QUARTERS, allowedQuarters } from './calendarMask.ts';
import { dateText, listOf, monthsText, weekdaysText } from './calendarWords.ts';
import { english } from './language.ts';
import type { ScheduleLanguage } from './language.ts';
import type { Rule, RuleAction, RuleConditions, Trigger } from './types.ts';

/**
 * One plain sentence of a rule as a remote or a timer could hold it: `1 May to 15 Sep, Mon-Fri:
 * down at 14:30, up at 19:45`. It speaks of the rule alone: rules before it and wind go first.
 */
export function describeRule(
  rule: Rule,
  units: UnitSystem = 'metric',
  language: ScheduleLanguage = english,
): string {
  const { when, then } = rule;
  if (!holdsInAnyMonth(when)) return language.sentence(language.never, actionText(then, language));
  const conditions = conditionTexts(when, units, language);
  const body = bodyText(when, then, conditions, language);
  const heading = headingText(when, conditions.length > 0, language);
  return language.sentence(heading, body);
}

function holdsInAnyMonth(when: RuleConditions): boolean {
  const { months, weekdays } = when;
  if (weekdays?.length === 0) return false;
  return spansByMonth(when).some((spans, i) => {
    return spans.length > 0 && (months === undefined || months.includes(i + 1));
  });
}

function headingText(when: RuleConditions, sensed: boolean, language: ScheduleLanguage): string {
  const { dates, months, weekdays, clock, grid } = when;
  const parts = [
    ...(dates ? [datesText(dates, language)] : []),
    ...(months && !grid && new Set(months).size < 12 ? [monthsText(months, language)] : []),
    ...(weekdays && new Set(weekdays).size < 7 ? [weekdaysText(weekdays, language)] : []),
  ];
  if (parts.length > 0) return language.heading(parts);
  return clock || grid || sensed ? language.everyDay : language.always;
}

function datesText({ from, to }: { from: string; to: string }, language: ScheduleLanguage): string {
  const first = dateText(from, language);
  return from === to ? first : language.span(first, dateText(to, language));
}

function bodyText(
  when: RuleConditions,
  then: RuleAction,
  conditions: string[],
  language: ScheduleLanguage,
): string {
  const manner = mannerText(then, language);
  const verb = then.kind === 'raise' ? language.up : language.down;
  const words = (...parts: string[]) => parts.filter(Boolean).join(' ');
  const sensed = conditions.length > 0 ? language.whilst(listOf(conditions, language)) : '';

  const [first] = spansByMonth(when);
  const atOneTime = first.length === 1 ? first[0] : undefined;
  if (!when.grid && atOneTime && !sensed && then.kind !== 'raise' && !isAllDay(atOneTime)) {
    const [from, to] = clockOf(atOneTime, language);
    const start = words(verb, language.at(from), manner);
    return language.startAndEnd(start, words(language.up, language.at(to)));
  }
  return words(verb, manner, timesText(when, language), sensed);
}

/** When, if not all the time: `from 14:30 to 19:45`, or month by month for a painted grid. */
function timesText(when: RuleConditions, language: ScheduleLanguage): string {
  const spans = spansByMonth(when);
  const texts = spans.map((list) => spansText(list, language));
  if (new Set(texts).size === 1 && !(when.grid && when.months)) {
    return isAllDay(spans[0][0]) && !when.clock && !when.grid ? '' : texts[0];
  }
  const runs: string[] = [];
  for (const text of new Set(texts)) {
    const months = texts.flatMap((t, i) => {
      const counts = t !== '' && (when.months?.includes(i + 1) ?? true);
      return counts && t === text ? [i + 1] : [];
    });
    if (months.length > 0) runs.push(language.monthSpans(monthsText(months, language), text));
  }
  return language.months(runs);
}

/** Minutes after midnight; a span that runs past midnight ends below its start. */
interface Span {
  from: number;
  to: number;
}

function isAllDay(span: Span | undefined): boolean {
  return span !== undefined && span.from === 0 && span.to === QUARTERS * MINUTES_PER_QUARTER;
}

/**
 * The spans of the day in which clock and grid let a rule hold, for each month. A span past
 * midnight stays in one piece where neither weekdays nor a grid cut it there.
 */
function spansByMonth(when: RuleConditions): Span[][] {
  const quarters = allowedQuarters(when);
  const whole = !when.grid && (when.weekdays === undefined || new Set(when.weekdays).size === 7);
  return Array.from({ length: 12 }, (_, month) => {
    const day = quarters.subarray(month * QUARTERS, (month + 1) * QUARTERS);
    const spans: Span[] = [];
    for (let i = 0; i < QUARTERS; i++) {
      if (day[i] === 0) continue;
      if (i === 0 || day[i - 1] === 0) spans.push({ from: i * MINUTES_PER_QUARTER, to: 0 });
      spans.at(-1)!.to = (i + 1) * MINUTES_PER_QUARTER;
    }
    if (!whole || spans.length < 2 || day[0] === 0 || day[QUARTERS - 1] === 0) return spans;
    return [...spans.slice(1, -1), { from: spans.at(-1)!.from, to: spans[0].to }];
  });
}

function clockOf({ from, to }: Span, language: ScheduleLanguage): [string, string] {
  return [language.clock(from), language.clock(to)];
}

function spansText(spans: readonly Span[], language: ScheduleLanguage): string {
  if (spans.length === 1 && isAllDay(spans[0])) return language.allDay;
  const texts = spans.map((span) => language.between(...clockOf(span, language)));
  return listOf(texts, language);
}

function actionText(action: RuleAction, language: ScheduleLanguage): string {
  const verb = action.kind === 'raise' ? language.up : language.down;
  return [verb, mannerText(action, language)].filter(Boolean).join(' ');
}

/** How far down and with which slats; empty where simply up or down. */
function mannerText(action: RuleAction, language: ScheduleLanguage): string {
  if (action.kind === 'raise') return '';
  const { share = 1 } = action;
  const percent = new Intl.NumberFormat(language.locale, {
    style: 'percent',
    maximumFractionDigits: 1,
  });
  const angle = new Intl.NumberFormat(language.locale, {
    style: 'unit',
    unit: 'degree',
    unitDisplay: 'narrow',
  });
  return [
    ...(share < 1 ? [language.share(percent.format(share))] : []),
    ...(action.kind === 'tilt' ? [language.slatsAt(angle.format(action.angle))] : []),
    ...(action.kind === 'track' ? [language.slatsFollow] : []),
  ].join(' ');
}

function conditionTexts(
  when: RuleConditions,
  units: UnitSystem,
  language: ScheduleLanguage,
): string[] {
  const amount = (quantity: 'irradiance' | 'temperature') => (value: number) => {
    const text = formatQuantity(quantity, value, units);
    return text.replace(/\.0+(?= )/, '');
  };
  const sun = amount('irradiance');
  const warmth = amount('temperature');
  type Say = (at: string, release: string) => string;
  const trigger = (t: Trigger | undefined, show: (value: number) => string, say: Say) =>
    t ? [say(show(t.at), show(t.release))] : [];
  return [
    ...(when.sunOnFacade === undefined
      ? []
      : [when.sunOnFacade ? language.sunOn : language.sunOff]),
    ...trigger(when.irradianceAbove, sun, language.irradianceAbove),
    ...trigger(when.irradianceBelow, sun, language.irradianceBelow),
    ...trigger(when.outdoorAbove, warmth, language.outdoorAbove),
    ...trigger(when.outdoorBelow, warmth, language.outdoorBelow),
    ...trigger(when.roomAbove, warmth, language.roomAbove),
    ...trigger(when.roomBelow, warmth, language.roomBelow),
  ];
}

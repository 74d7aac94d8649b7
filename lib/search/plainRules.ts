import { describeRule, readingFigure } from '../schedule/index.ts';
import type { Rule, RuleConditions, Schedule, Trigger } from '../schedule/index.ts';
import { unitOf } from '../units/index.ts';
import type { QuantityName, UnitSystem } from '../units/index.ts';
import { searchWords } from './words.ts';
import type { SearchWords } from './words.ts';

/**
 * A schedule in short lines that can be set at a remote, a timer or a control: `1 May to 15
 * September, west group: down at 14:30, up at 19:45`. All figures of the schedules that a search
 * finds are in them, so each can be set up again from its lines alone: clock times in hours and
 * minutes of the local clock, sun and temperatures in the units of the system. Rules of other forms
 * are told as by lib/schedule.
 */
export function plainRules(
  { rules, minMinutesBetweenMoves }: Schedule,
  name: string,
  words: SearchWords = searchWords,
  system: UnitSystem = 'metric',
): string[] {
  if (rules.length === 0) return [words.alwaysUp(name)];
  return [
    ...rules.map((rule) => plainRule(rule, name, words, system)),
    ...(minMinutesBetweenMoves > 0 ? [words.pause(minMinutesBetweenMoves)] : []),
  ];
}

function plainRule(rule: Rule, name: string, words: SearchWords, system: UnitSystem): string {
  const action = actionText(rule, words, system);
  if (action === undefined) return describeRule(rule, system, words.schedules);
  return words.line(words.heading(seasonText(rule.when, words), name), action);
}

function seasonText({ dates }: RuleConditions, words: SearchWords): string {
  if (!dates) return words.allYear;
  const text = (date: string) =>
    words.date(Number(date.slice(3)), words.months[Number(date.slice(0, 2)) - 1]);
  return words.season(text(dates.from), text(dates.to));
}

/** What is done in the season; absent for a rule of a form that no search gives. */
function actionText(
  { when, then }: Rule,
  words: SearchWords,
  system: UnitSystem,
): string | undefined {
  const { dates: _dates, clock, irradianceAbove: sun, roomAbove: room, ...rest } = when;
  const other = Object.values(rest).some((value) => value !== undefined);
  const tracks = then.kind === 'track';
  if (other || !(tracks || then.kind === 'lower') || (then.share ?? 1) < 1) return undefined;
  if (sun || room) {
    if (clock) return undefined;
    const readings = (side: keyof Trigger) => ({
      sunText: sun && words.sun(reading('irradiance', sun[side], words, system)),
      roomText: room && words.room(reading('temperature', room[side], words, system)),
    });
    const on = joined(readings('at'), words.both);
    const off = joined(readings('release'), words.either);
    return tracks ? words.slats(on, off) : words.down(on, off);
  }
  if (tracks) return undefined;
  if (!clock || clock.from % 1440 === clock.to % 1440) return words.dayAndNight;
  const over = clock.to !== 0 && clock.to < clock.from;
  return (over ? words.clockNextDay : words.clock)(clockText(clock.from), clockText(clock.to));
}

function joined(
  { sunText, roomText }: { sunText?: string; roomText?: string },
  join: (sun: string, room: string) => string,
): string {
  return sunText && roomText ? join(sunText, roomText) : (sunText ?? roomText ?? '');
}

function reading(
  quantity: QuantityName,
  value: number,
  words: SearchWords,
  system: UnitSystem,
): string {
  const figure = words.decimal(readingFigure(quantity, value, system));
  return `${figure} ${unitOf(quantity, system).symbol}`;
}

function clockText(minutes: number): string {
  const pad = (n: number) => String(n).padStart(2, '0');
  return `${pad(Math.floor(minutes / 60))}:${pad(minutes % 60)}`;
}

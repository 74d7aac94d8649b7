import { formatQuantity, unitOf } from '../units/index.ts';
import type { QuantityName, UnitSystem } from '../units/index.ts';
import { describeCalendar } from './describeCalendar.ts';
import type { Rule, RuleAction, RuleConditions, Schedule, Trigger } from './types.ts';
import { english } from './words.ts';
import type { ScheduleWords } from './words.ts';

/**
 * A rule in a sentence that a person could set a remote or a timer by: `1 May to 15 Sep, Mon-Fri:
 * down with slats at 45° from 14:30 to 19:45, when the sun is on the facade.`
 */
export function describeRule(
  { when, then }: Rule,
  system: UnitSystem = 'metric',
  words: ScheduleWords = english,
): string {
  const { heading, hours } = describeCalendar(when, words);
  const conditions = words.all(conditionTexts(when, system, words));
  return words.sentence(heading, actionText(then, words), hours, conditions);
}

/** A schedule in sentences: its rules in order, what happens where none applies, the pause. */
export function describeSchedule(
  { rules, minMinutesBetweenMoves }: Schedule,
  system: UnitSystem = 'metric',
  words: ScheduleWords = english,
): string[] {
  if (rules.length === 0) return [words.raisedAllYear];
  return [
    ...rules.map((rule) => describeRule(rule, system, words)),
    rules.length > 1 ? words.firstDecides : words.raisedOtherwise,
    ...(minMinutesBetweenMoves > 0 ? [words.pause(plain(minMinutesBetweenMoves, 0))] : []),
  ];
}

function actionText(then: RuleAction, words: ScheduleWords): string {
  if (then.kind === 'raise') return words.raised;
  const { share = 1 } = then;
  const percent = share < 1 ? plain(100 * share, 0) : undefined;
  if (then.kind === 'track') return words.slatsFollow(percent);
  if (then.kind === 'lower') return words.down(percent);
  return words.slatsAt(words.decimal(plain(then.angle, 1)), percent);
}

function conditionTexts(when: RuleConditions, system: UnitSystem, words: ScheduleWords): string[] {
  const texts: string[] = [];
  const reading = (
    tell: (range: string) => string,
    quantity: QuantityName,
    above: Trigger | undefined,
    below: Trigger | undefined,
  ) => {
    const value = (v: number) => words.decimal(readingFigure(quantity, v, system));
    const withUnit = (v: number) => `${value(v)} ${unitOf(quantity, system).symbol}`;
    if (above) texts.push(tell(words.orMore(withUnit(above.at), value(above.release))));
    if (below) texts.push(tell(words.orLess(withUnit(below.at), value(below.release))));
  };
  if (when.sunOnFacade !== undefined) texts.push(when.sunOnFacade ? words.sunOn : words.sunOff);
  const sun = when.sunOnFacade ? words.sunGives : words.facadeGets;
  reading(sun, 'irradiance', when.irradianceAbove, when.irradianceBelow);
  reading(words.outdoors, 'temperature', when.outdoorAbove, when.outdoorBelow);
  reading(words.roomIs, 'temperature', when.roomAbove, when.roomBelow);
  return texts;
}

/** A value in the chosen system without trailing zeros: `22`, `71.6`. */
export function readingFigure(quantity: QuantityName, value: number, system: UnitSystem): string {
  return String(Number(formatQuantity(quantity, value, system, { symbol: false })));
}

function plain(value: number, digits: number): string {
  return String(Number(value.toFixed(digits)));
}

import { inTurn, monthText, problem, verbatim } from '../../problem/index.ts';
import type { Problem, Text } from '../../problem/index.ts';
import type { SunYear } from '../../sun/index.ts';
import { HOURS, monthOfDay } from '../../time/index.ts';
import type { TypicalYear } from '../types.ts';
import { say } from '../say.ts';
import { sunOf } from './sun.ts';
import { findTimeShift } from './timeShift.ts';
import type { TimeShift } from './timeShift.ts';
import type { Check, CheckId } from './types.ts';

/** Minutes a file's sun may be off before the user is told. */
const TOLD_SHIFT = 10;
const SURE = 0.5;
/** Parts of the year's global irradiance. */
const NIGHT_SHARE = 0.01;
const BALANCE_TOLD = 0.08;
const BALANCE_REFUSED = 0.25;
/** Monthly clearness index: the sunniest months of the sunniest places reach about 0.8. */
const CLEARNESS_TOLD = 0.88;
const CLEARNESS_REFUSED = 1;

export function passed(id: CheckId, sentence: Text): Check {
  return { id, level: 'ok', sentence };
}

export function warned(id: CheckId, sentence: Text): Check {
  return { id, level: 'warning', sentence };
}

export function failed(id: CheckId, found: Problem): Check {
  return { id, level: 'error', sentence: told(found), problem: found };
}

/** A problem in one line, as `formatProblem` has it. */
export function told({ path, message, value, allowed, fix, texts }: Problem): Text {
  const said = {
    path: texts?.where ?? path,
    message: texts?.message ?? message,
    ...(value !== undefined && { value: texts?.value ?? value }),
    ...(allowed !== undefined && { allowed: texts?.allowed ?? allowed }),
  };
  const facts = value === undefined ? 'bare' : 'value';
  const withAllowed = value === undefined ? 'allowed' : 'both';
  const line = say(`told.${allowed === undefined ? facts : withAllowed}`, said);
  return fix ? inTurn(line, texts?.fix ?? verbatim(fix)) : line;
}

/**
 * Holds a year against the sun at its place: the time of its stamps, light at night, global against
 * direct and diffuse, and each month against what reaches the top of the atmosphere. A sun that is
 * found late or early is told once, and the other checks then use the file's own time.
 * @param measured whether all three irradiances come from the file, so that their balance tells
 */
export function checkYear(year: TypicalYear, measured = true): Check[] {
  const sun = sunOf(year);
  const shift = findTimeShift(year, sun);
  const late = shift.confidence >= SURE && Math.abs(shift.minutes) > TOLD_SHIFT;
  const ownSun = late ? sunOf(year, shift.minutes) : sun;
  const checks = [checkTime(shift), checkNight(year.ghi, ownSun)];
  if (measured) checks.push(checkBalance(year, ownSun));
  checks.push(checkClearness(year.ghi, ownSun));
  return checks;
}

/** Whether the stamps agree with the sun, by the figure of findTimeShift. */
export function checkTime(shift: TimeShift): Check {
  if (shift.confidence < SURE) {
    return warned('time', say('check.fewClearDays'));
  }
  const minutes = Math.max(1, Math.round(Math.abs(shift.minutes)));
  if (Math.abs(shift.minutes) <= TOLD_SHIFT) {
    return passed('time', say('check.timeFits', { minutes }));
  }
  return warned('time', say(shift.minutes > 0 ? 'check.timeLate' : 'check.timeEarly', { minutes }));
}

/** Whether the nights are dark. */
export function checkNight(ghi: Float64Array, sun: SunYear): Check {
  let night = 0;
  let total = 0;
  for (let hour = 0; hour < HOURS; hour++) {
    total += ghi[hour];
    if (sun.cosZenith[hour] === 0) night += ghi[hour];
  }
  if (night <= NIGHT_SHARE * total) return passed('night', say('check.dark'));
  return failed(
    'night',
    problem(say('quantity.ghi'), {
      message: say('check.light'),
      value: say('check.lightShare', { percent: percent(night / total) }),
      allowed: say('range.upToShare', { percent: percent(NIGHT_SHARE) }),
      fix: say('check.lightFix'),
    }),
  );
}

/** Whether global irradiance is direct x sine of the altitude + diffuse. */
export function checkBalance(year: Pick<TypicalYear, 'ghi' | 'dni' | 'dhi'>, sun: SunYear): Check {
  let off = 0;
  let total = 0;
  for (let hour = 0; hour < HOURS; hour++) {
    const sum = year.dni[hour] * sun.cosZenith[hour] + year.dhi[hour];
    off += Math.abs(year.ghi[hour] - sum);
    total += year.ghi[hour];
  }
  const share = off / total;
  if (share > BALANCE_REFUSED) {
    return failed(
      'balance',
      problem(say('quantity.irradiance'), {
        message: say('check.unbalanced'),
        value: say('check.unbalancedShare', { percent: percent(share) }),
        allowed: say('range.upToShare', { percent: percent(BALANCE_REFUSED) }),
        fix: say('check.unbalancedFix'),
      }),
    );
  }
  const sentence = say('check.balance', { percent: percent(share) });
  return share > BALANCE_TOLD ? warned('balance', sentence) : passed('balance', sentence);
}

/** Whether any month has more sun than reaches the top of the atmosphere over the place. */
export function checkClearness(ghi: Float64Array, sun: SunYear): Check {
  const file = new Float64Array(12);
  const outside = new Float64Array(12);
  for (let hour = 0; hour < HOURS; hour++) {
    const month = monthOfDay(Math.floor(hour / 24)) - 1;
    const up = (sun.hourStart[hour + 1] - sun.hourStart[hour]) / sun.stepsPerHour;
    file[month] += ghi[hour];
    outside[month] += sun.extraterrestrial[hour] * sun.cosZenith[hour] * up;
  }
  const clearness = file.map((sum, m) => (outside[m] > 0 ? sum / outside[m] : 0));
  const most = clearness.indexOf(Math.max(...clearness));
  const said = { month: monthText(most + 1), percent: percent(clearness[most]) };
  if (clearness[most] > CLEARNESS_REFUSED) {
    return failed(
      'clearness',
      problem(say('quantity.ghi'), {
        message: say('check.tooClear', { month: said.month }),
        value: say('check.share', { percent: said.percent }),
        allowed: say('range.upToShare', { percent: 100 }),
        fix: say('check.tooClearFix'),
      }),
    );
  }
  const sentence = say('check.clearest', said);
  return clearness[most] > CLEARNESS_TOLD
    ? warned('clearness', inTurn(sentence, say('check.clearerThanUsual')))
    : passed('clearness', sentence);
}

/** Per cent with one decimal below ten. */
function percent(share: number): number {
  const value = share * 100;
  return value < 10 ? Number(value.toFixed(1)) : Math.round(value);
}

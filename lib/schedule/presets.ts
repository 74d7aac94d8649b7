import { ESCAPE_CAUTION } from '../blind/index.ts';
import type { RuleAction, RuleConditions, Schedule } from './types.ts';
import { english } from './words.ts';
import type { PresetKey, ScheduleWords } from './words.ts';

/** A ready-made schedule to start from. */
export interface SchedulePreset {
  schedule: Schedule;
  /** What it is for, what it costs and what it needs. */
  purpose: string;
  /** Where its values come from. */
  note: string;
  /** What could hurt someone: it closes windows while people sleep or are away. */
  caution?: string;
}

const SUMMER = {
  north: { from: '05-01', to: '09-30' },
  south: { from: '11-01', to: '03-31' },
};
const WORKING_DAYS = [1, 2, 3, 4, 5];
/** Least minutes between moves: for a timer, and for sensors under passing clouds. */
const TIMER = 0;
const SENSOR = 30;

/**
 * Ready-made schedules, named for what they do. Their values are common practice, told beside each.
 * @param idPrefix put before their ids, so that they do not meet those of a project
 * @param told the words of their names, purposes and notes
 */
export function presetSchedules(
  hemisphere: 'north' | 'south' = 'north',
  idPrefix = '',
  told: ScheduleWords = english,
): SchedulePreset[] {
  const dates = SUMMER[hemisphere];
  const strongSun: RuleConditions = {
    sunOnFacade: true,
    irradianceAbove: { at: 150, release: 100 },
  };
  const down: RuleAction = { kind: 'lower' };
  const caution = ESCAPE_CAUTION;

  const preset = (
    id: string,
    minMinutesBetweenMoves: number,
    when: RuleConditions,
    then: RuleAction,
  ): SchedulePreset => {
    const { name, ...words } = told.preset(keyOf(id));
    const rules = [{ id, when: structuredClone(when), then: { ...then } }];
    return { schedule: { id: idPrefix + id, name, rules, minMinutesBetweenMoves }, ...words };
  };
  const hours = (from: string, to: string) => ({ from: minutes(from), to: minutes(to) });
  const away = { dates, weekdays: WORKING_DAYS, clock: hours('08:00', '18:00') };
  const hot = { sunOnFacade: true, outdoorAbove: { at: 22, release: 20 } };
  const warmRoom = { sunOnFacade: true, roomAbove: { at: 23, release: 22 } };

  return [
    preset('sun-on-glass', SENSOR, { dates, ...strongSun }, down),
    { ...preset('away', TIMER, away, down), caution },
    { ...preset('privacy', TIMER, { clock: hours('21:00', '07:00') }, down), caution },
    preset('track', SENSOR, strongSun, { kind: 'track' }),
    preset('hot-outdoors', SENSOR, hot, down),
    preset('west-afternoon', TIMER, { dates, clock: hours('14:30', '19:45') }, down),
    { ...preset('east-morning', TIMER, { dates, clock: hours('05:30', '11:30') }, down), caution },
    preset('room-24', SENSOR, warmRoom, down),
  ];
}

/** Its place in the language file: `sunOnGlass` of `sun-on-glass`. */
function keyOf(id: string): PresetKey {
  return id.replace(/-(.)/g, (_, letter: string) => letter.toUpperCase()) as PresetKey;
}

function minutes(time: string): number {
  const [hours, rest] = time.split(':').map(Number);
  return 60 * hours + rest;
}

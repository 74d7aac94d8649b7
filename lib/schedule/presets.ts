import { ESCAPE_CAUTION } from '../blind/index.ts';
import { daysInMonth } from '../time/index.ts';
import type { RuleConditions, Schedule } from './types.ts';

/** A ready schedule to start from. */
export interface PresetSchedule {
  schedule: Schedule;
  /** What it is for, and what it costs. */
  purpose: string;
  /** Where its values come from. */
  source: string;
  /** What can go wrong that hurts someone. */
  caution?: string;
}

const WARM_SEASON = { from: '05-01', to: '09-30' };
const WORKING_DAYS = [1, 2, 3, 4, 5];
const clock = (from: string, to: string) => ({ from: minutes(from), to: minutes(to) });

/** Written for the north; all values are common practice. */
const northern: Omit<PresetSchedule, 'source'>[] = [
  {
    schedule: {
      id: 'sun-on-glass',
      name: 'Sun on glass, summer',
      rules: [
        {
          id: 'sun',
          when: {
            dates: WARM_SEASON,
            sunOnFacade: true,
            irradianceAbove: { at: 150, release: 100 },
          },
          then: { kind: 'lower' },
        },
      ],
      minMinutesBetweenMoves: 30,
    },
    purpose:
      'Down while the sun is on the facade in the warm half of the year. Keeps most of the gain out and the view free for the rest of the day; needs a sun sensor.',
  },
  {
    schedule: {
      id: 'away-weekdays',
      name: 'Away on weekdays',
      rules: [
        {
          id: 'away',
          when: { dates: WARM_SEASON, weekdays: WORKING_DAYS, clock: clock('08:00', '18:00') },
          then: { kind: 'lower' },
        },
      ],
      minMinutesBetweenMoves: 0,
    },
    purpose:
      'Down on working days in the warm half of the year while nobody is in. Costs no view that anybody would have; a timer is enough.',
    caution: ESCAPE_CAUTION,
  },
  {
    schedule: {
      id: 'privacy-nights',
      name: 'Privacy nights',
      rules: [{ id: 'night', when: { clock: clock('21:00', '07:00') }, then: { kind: 'lower' } }],
      minMinutesBetweenMoves: 0,
    },
    purpose:
      'Down at night all year. Keeps early summer sun out of east windows up to 07:00 and otherwise stops no gain.',
    caution: ESCAPE_CAUTION,
  },
  {
    schedule: {
      id: 'track-sun',
      name: 'Track the sun, all year',
      rules: [
        {
          id: 'sun',
          when: { sunOnFacade: true, irradianceAbove: { at: 150, release: 100 } },
          then: { kind: 'track' },
        },
      ],
      minMinutesBetweenMoves: 30,
    },
    purpose:
      'Slats turn just far enough to keep direct sun out, in winter too. Keeps daylight and part of the view; costs winter gain.',
  },
  {
    schedule: {
      id: 'hot-outdoors',
      name: 'Hot outdoors',
      rules: [
        {
          id: 'hot',
          when: { sunOnFacade: true, outdoorAbove: { at: 22, release: 20 } },
          then: { kind: 'lower' },
        },
      ],
      minMinutesBetweenMoves: 30,
    },
    purpose:
      'Down while the sun is on the facade and it is warm outdoors, whatever the date. Leaves cool sunny days their gain; needs a sun sensor and a thermometer.',
  },
  {
    schedule: {
      id: 'west-afternoon',
      name: 'West afternoon clock',
      rules: [
        {
          id: 'afternoon',
          when: { dates: WARM_SEASON, clock: clock('14:30', '19:45') },
          then: { kind: 'lower' },
        },
      ],
      minMinutesBetweenMoves: 0,
    },
    purpose:
      'For west windows: down every summer afternoon, cloudy or not. A timer is enough; costs the evening view.',
  },
  {
    schedule: {
      id: 'east-morning',
      name: 'East morning clock',
      rules: [
        {
          id: 'morning',
          when: { dates: WARM_SEASON, clock: clock('05:30', '11:30') },
          then: { kind: 'lower' },
        },
      ],
      minMinutesBetweenMoves: 0,
    },
    purpose:
      'For east windows: down every summer morning, cloudy or not. A timer is enough; costs the morning light.',
    caution: ESCAPE_CAUTION,
  },
  {
    schedule: {
      id: 'room-under-24',
      name: 'Keep the room under 24 °C',
      rules: [
        {
          id: 'warm',
          when: { sunOnFacade: true, roomAbove: { at: 23, release: 22 } },
          then: { kind: 'lower' },
        },
      ],
      minMinutesBetweenMoves: 30,
    },
    purpose:
      'Down while the sun is on the facade and the room is warm already: from 23 °C, before it gets to 24 °C. Leaves a cool room all its sun; needs a room thermometer.',
  },
];

/** Schedules to start from, for a house north or south of the equator; fresh copies. */
export function presetSchedules(hemisphere: 'north' | 'south' = 'north'): PresetSchedule[] {
  return structuredClone(northern).map((preset) => {
    if (hemisphere === 'south') {
      for (const { when } of preset.schedule.rules) mirror(when);
    }
    return { ...preset, source: 'common practice' };
  });
}

/** Moves a rule's season by half a year. */
function mirror(when: RuleConditions): void {
  const { dates } = when;
  if (dates) when.dates = { from: halfYearOn(dates.from), to: halfYearOn(dates.to) };
}

/** The same day six months on; the last day of a month stays the last. */
function halfYearOn(monthDay: string): string {
  const [month, day] = monthDay.split('-').map(Number);
  const other = ((month + 5) % 12) + 1;
  const last = daysInMonth[other - 1];
  const shifted = day >= daysInMonth[month - 1] ? last : Math.min(day, last);
  return `${String(other).padStart(2, '0')}-${String(shifted).padStart(2, '0')}`;
}

function minutes(time: string): number {
  const [hours, rest] = time.split(':').map(Number);
  return hours * 60 + rest;
}

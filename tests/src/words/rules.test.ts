import { describe, expect, it } from 'vitest';
import { commonSchedule } from '../../../lib/decide/index.ts';
import { defaultProject } from '../../../lib/project/index.ts';
import {
  describeRule,
  describeSchedule,
  english as plainEnglish,
  presetSchedules,
} from '../../../lib/schedule/index.ts';
import type { Rule, RuleAction, RuleConditions } from '../../../lib/schedule/index.ts';
import { searchWords } from '../../../lib/search/index.ts';
import { cardWords, inOwnWords, scheduleWords } from '../../../src/words/rules.ts';
import { Words } from '../../../src/words/index.ts';
import { englishIn } from './englishIn.ts';

const english = await Words.load('en', ['rules']);
const german = await Words.load('de', ['rules']);
const inEnglish = scheduleWords(english);
const inGerman = scheduleWords(german);

function rule(when: RuleConditions, then: RuleAction = { kind: 'lower' }): Rule {
  return { id: 'rule', when, then };
}

const clock = { from: 1320, to: 420 };
const painted = [
  { month: 6, from: 480, to: 720 },
  { month: 6, from: 900, to: 1080 },
  { month: 6, from: 1200, to: 1260 },
  { month: 9, from: 0, to: 1440 },
];

/** Rules that use every sentence there is. */
const rules: Rule[] = [
  rule({}, { kind: 'raise' }),
  rule({ months: [4, 5, 6], weekdays: [1, 2, 3, 4, 5], clock }),
  rule({ months: [4, 6], dates: { from: '04-15', to: '06-15' } }, { kind: 'lower', share: 0.5 }),
  rule({ sunOnFacade: true }, { kind: 'tilt', angle: 22.5 }),
  rule(
    { sunOnFacade: false, clock: { from: 480, to: 600 } },
    { kind: 'tilt', angle: 45, share: 0.7 },
  ),
  rule({ sunOnFacade: true, irradianceAbove: { at: 150, release: 100 } }, { kind: 'track' }),
  rule({ irradianceBelow: { at: 50, release: 80 } }, { kind: 'track', share: 0.4 }),
  rule({ outdoorAbove: { at: 22.5, release: 20 }, roomAbove: { at: 23.5, release: 22 } }),
  rule({ outdoorBelow: { at: 5, release: 8 }, roomBelow: { at: 18, release: 19 } }),
  rule({ grid: painted }),
  rule({ grid: painted.slice(0, 3) }),
  rule({ grid: [] }),
];

describe('rules in words', () => {
  it('are in English as the library tells them', () => {
    for (const each of rules) {
      expect(describeRule(each, 'metric', inEnglish)).toBe(describeRule(each));
      expect(describeRule(each, 'imperial', inEnglish)).toBe(describeRule(each, 'imperial'));
    }
    expect(inEnglish.months).toEqual(plainEnglish.months);
    expect(inEnglish.weekdays).toEqual(plainEnglish.weekdays);
    expect(cardWords(english).months).toEqual(searchWords.months);
  });

  it('are in German without an English word', () => {
    for (const each of rules) {
      const text = describeRule(each, 'metric', inGerman);
      expect(englishIn(text), text).toEqual([]);
      expect(text).not.toBe(describeRule(each));
    }
    const whole = { id: 's', name: 'S', rules, minMinutesBetweenMoves: 30 };
    const text = describeSchedule(whole, 'metric', inGerman).join(' ');
    expect(englishIn(text)).toEqual([]);
    expect(text).toContain('Mindestens 30 min');
  });

  it('have the decimal comma and the units asked for in German', () => {
    expect(describeRule(rules[3], 'metric', inGerman)).toBe(
      'Ganzjährig: unten mit Lamellen auf 22,5°, wenn die Sonne auf der Fassade steht.',
    );
    // 22.5 C = 72.5 F, 23.5 C = 74.3 F.
    expect(describeRule(rules[7], 'imperial', inGerman)).toMatch(/72,5 °F.* 74,3 °F/);
    expect(describeRule(rules[1], 'metric', inGerman)).toBe(
      'April bis Juni, Mo–Fr: unten von 22:00 bis 07:00 Uhr am nächsten Tag.',
    );
  });
});

describe('schedules that the engine brings along', () => {
  it('are named in the language of the page, those of the user left alone', () => {
    const common = commonSchedule('north');
    const own = { ...common, id: 'own', name: 'Down in the evening' };
    const plan = { ...defaultProject(), schedules: [common, own] };
    const names = inOwnWords(german, plan).schedules.map(({ name }) => name);
    expect(names).toEqual(['Unten bei starker Sonne, Sommerhalbjahr', 'Down in the evening']);
    expect(inOwnWords(english, plan)).toEqual(plan);
  });
});

describe('ready-made schedules', () => {
  it('have their names, purposes and notes in both languages', () => {
    const own = presetSchedules('north');
    const shown = presetSchedules('north', '', inEnglish);
    expect(shown).toEqual(own);
    presetSchedules('north', '', inGerman).forEach((preset, i) => {
      const { schedule, purpose, note } = preset;
      for (const text of [schedule.name, purpose, note]) expect(englishIn(text), text).toEqual([]);
      expect(schedule.name).not.toBe(own[i].schedule.name);
      expect(purpose).not.toBe(own[i].purpose);
      expect(note).toMatch(/Übliche Praxis/);
      expect(schedule.rules).toEqual(own[i].schedule.rules);
    });
  });
});

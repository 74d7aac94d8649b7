import { describe, expect, it } from 'vitest';
import type { RuleAction, RuleConditions, Schedule } from '../../../lib/schedule/index.ts';
import { plainRules } from '../../../lib/search/index.ts';
import { fromLines } from './support.ts';

function schedule(when: RuleConditions, then: RuleAction = { kind: 'lower' }, pause = 0): Schedule {
  const rules = [{ id: 'rule', when, then }];
  return { id: 's', name: 'S', rules, minMinutesBetweenMoves: pause };
}
const clock = (from: number, to: number) => ({ clock: { from, to } });
const SUMMER = { dates: { from: '05-01', to: '09-15' } };

describe('plain rules', () => {
  const cases: [Schedule, string[]][] = [
    [
      schedule({ ...SUMMER, ...clock(870, 1185) }),
      ['1 May to 15 September, west group: down at 14:30, up at 19:45'],
    ],
    [
      schedule({ dates: { from: '10-16', to: '03-31' }, ...clock(0, 1440) }),
      ['16 October to 31 March, west group: down day and night'],
    ],
    [schedule(clock(1200, 1440)), ['All year, west group: down at 20:00, up at 24:00']],
    [schedule(clock(1320, 420)), ['All year, west group: down at 22:00, up at 07:00 the next day']],
    [
      schedule({ ...SUMMER, irradianceAbove: { at: 225, release: 175 } }, { kind: 'track' }, 30),
      [
        '1 May to 15 September, west group: slats follow the sun from 225 W/m² on the facade, up at 175 W/m² on the facade',
        'at least 30 minutes between two moves',
      ],
    ],
    [
      schedule({ roomAbove: { at: 23.5, release: 22 } }, { kind: 'lower' }, 30),
      [
        'All year, west group: down at 23.5 °C in the room, up at 22 °C in the room',
        'at least 30 minutes between two moves',
      ],
    ],
    [
      schedule(
        { roomAbove: { at: 24, release: 23 }, irradianceAbove: { at: 300, release: 250 } },
        { kind: 'lower' },
        30,
      ),
      [
        'All year, west group: down at 300 W/m² on the facade and 24 °C in the room, up at 250 W/m² on the facade or 23 °C in the room',
        'at least 30 minutes between two moves',
      ],
    ],
  ];

  it.each(cases)('says it in a line: %#', (given, lines) => {
    expect(plainRules(given, 'west group')).toEqual(lines);
    if (lines[0].endsWith('day and night')) return;
    const back = fromLines(lines);
    expect(back.rules[0].when).toEqual(given.rules[0].when);
    expect(back.rules[0].then).toEqual(given.rules[0].then);
    expect(back.minMinutesBetweenMoves).toBe(given.minMinutesBetweenMoves);
  });

  it('says that a blind without rules stays up', () => {
    const none = { ...schedule({}), rules: [] };
    expect(plainRules(none, 'west group')).toEqual(['All year, west group: stays up']);
  });

  it('leaves no condition out: rules of other forms are told in full', () => {
    const forms: [RuleConditions, RuleAction, RegExp][] = [
      [{ ...clock(600, 720), weekdays: [1] }, { kind: 'lower' }, /Mon.*10:00 to 12:00/],
      [clock(600, 720), { kind: 'lower', share: 0.5 }, /50 %/],
      [clock(600, 720), { kind: 'tilt', angle: 60 }, /60°/],
      [{ ...clock(600, 720), roomAbove: { at: 24, release: 23 } }, { kind: 'lower' }, /12:00.*24/],
      [clock(600, 720), { kind: 'track' }, /following the sun/],
    ];
    for (const [when, then, text] of forms) {
      expect(plainRules(schedule(when, then), 'west group')[0]).toMatch(text);
    }
  });
});

import { describe, expect, it } from 'vitest';
import type { Project } from '../../../lib/project/index.ts';
import { unbalanced, yearBalance } from '../../../lib/room/index.ts';
import { createEngine, roomDetail } from '../../../lib/study/index.ts';
import type { RoomResult } from '../../../lib/study/index.ts';
import { HOURS, STEPS_PER_HOUR } from '../../../lib/time/index.ts';
import { example, exampleYear, library } from './support.ts';

const engine = createEngine();

function runRoom(project: Project): RoomResult {
  return engine.run({ project, library, year: exampleYear('studio') }).rooms[0];
}

/** The studio with the same blind and the same sun rule on every opening. */
function withBlind(blind: string | undefined): Project {
  const project = example('studio');
  project.groups = [];
  project.schedules = [
    {
      id: 'sun',
      name: 'Sun',
      minMinutesBetweenMoves: 15,
      rules: [
        {
          id: 'sun',
          when: {
            sunOnFacade: true,
            irradianceAbove: { at: 150, release: 100 },
            months: [5, 6, 7, 8, 9],
          },
          then: { kind: 'tilt', angle: 45 },
        },
      ],
    },
  ];
  for (const opening of project.openings) {
    delete opening.blind;
    delete opening.insectScreen;
    if (blind) opening.blind = { blind, schedule: 'sun' };
  }
  return project;
}

describe('a room with its blinds', () => {
  it('orders kinds of shading as physics demands', () => {
    const hours = [
      'external-slats-80-silver',
      'between-slats-25-vented',
      'internal-roller-white',
      undefined,
    ].map((blind) => runRoom(withBlind(blind)).with.hotHours);
    expect(hours).toEqual([...hours].sort((a, b) => a - b));
    expect(new Set(hours).size).toBe(4);
  });

  it('has the same year with a blind that never comes down as without one', () => {
    const project = withBlind('external-slats-80-silver');
    project.schedules[0].rules = [];
    const room = runRoom(project);
    expect(room.with).toEqual(room.without);
  });

  it('pays for blinds in winter with heating', () => {
    const project = withBlind('external-slats-80-silver');
    delete project.schedules[0].rules[0].when.months;
    const room = runRoom(project);
    expect(room.with.heatingKWh).toBeGreaterThan(room.without.heatingKWh * 1.05);
  });

  it('closes its heat balance in every hour', () => {
    const room = runRoom(example('studio'));
    for (const run of [room.runs.without, room.runs.with]) {
      const terms = yearBalance(run.model, run.drivers, run.sun, run.year);
      let worst = 0;
      for (let hour = 0; hour < HOURS; hour++) {
        const at = (term: keyof typeof terms) => terms[term][hour];
        const left = unbalanced({
          sun: at('sun'),
          internal: at('internal'),
          heating: at('heating'),
          cooling: at('cooling'),
          air: at('air'),
          transmission: at('transmission'),
          storage: at('storage'),
        });
        worst = Math.max(worst, Math.abs(left));
      }
      expect(worst).toBeLessThan(1e-6);
      expect(run.year.closure).toBeLessThan(0.05);
    }
  });

  it('names causes that add up to the whole', () => {
    const { runs } = runRoom(example('studio'));
    const { causes } = roomDetail(runs.without, 25);
    const shares = causes.causes.reduce((sum, cause) => sum + cause.share, 0);
    expect(shares).toBeCloseTo(1, 9);
    expect(causes.hours).toBe(runs.without.year.operative.filter((t) => t > 25).length);
  });
});

describe('blinds that answer to the room', () => {
  /** All blinds down while the room is over 23 C in daylight hours, up again under 22 C. */
  function triggered(): Project {
    const project = withBlind('external-slats-80-silver');
    project.schedules[0].minMinutesBetweenMoves = 0;
    project.schedules[0].rules[0].when = {
      clock: { from: 360, to: 1260 },
      roomAbove: { at: 23, release: 22 },
    };
    return project;
  }

  it('are down exactly when the temperature of the hour before says so', () => {
    const project = triggered();
    const result = engine.run({ project, library, year: exampleYear('studio') });
    const { operative } = result.rooms[0].runs.with.year;
    const { quarter } = result.calendar;
    const state = result.openings[0].blind!.state;
    let held = false;
    let wrong = 0;
    // From the second day on: the first hours look back to December.
    for (let hour = 1; hour < HOURS; hour++) {
      const before = operative[hour - 1];
      held = held ? before > 22 : before >= 23;
      if (hour < 24) continue;
      const minutes = quarter[hour * STEPS_PER_HOUR] * 15;
      const down = held && minutes >= 360 && minutes < 1260;
      if ((state[hour * STEPS_PER_HOUR] !== 0) !== down) wrong++;
    }
    // The room's year is closed once more after the blinds have moved: temperatures within
    // thousandths of a threshold may fall on its other side.
    expect(wrong).toBeLessThanOrEqual(4);
  });

  it('keep the room cooler than no blinds, at less winter cost than blinds by sun alone', () => {
    const byRoom = runRoom(triggered());
    const bySun = withBlind('external-slats-80-silver');
    delete bySun.schedules[0].rules[0].when.months;
    expect(byRoom.with.hotHours).toBeLessThan(byRoom.without.hotHours / 2);
    expect(byRoom.with.heatingKWh).toBeLessThan(runRoom(bySun).with.heatingKWh);
  });
});

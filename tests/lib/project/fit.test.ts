import { describe, expect, it } from 'vitest';
import type { Project } from '../../../lib/project/index.ts';
import { checked } from './changed.ts';
import { shippedLibrary } from './library.ts';

const library = shippedLibrary();

describe('things that do not fit', () => {
  const cases: [string, (p: Project) => void, RegExp][] = [
    [
      'a frame wider than its opening',
      (p) => {
        const widths = { head: 0.1, sill: 0.1, left: 0.5, right: 0.5 };
        const frame = { ...p.openings[0].frame, widths };
        Object.assign(p.openings[0], { width: 0.9, frame, airing: undefined });
      },
      /openings\[0\] "South window"\.frame\.widths\.left/,
    ],
    ['a wall full of openings', (p) => void (p.walls[2].area = 1), /walls\[2\] "South wall"\.area/],
    ['glass behind the wall', (p) => void (p.openings[0].setBack = 0.43), /\.setBack$/],
    [
      'a schedule beside a group',
      (p) => {
        p.schedules = [{ id: 's', name: 'S', rules: [], minMinutesBetweenMoves: 0 }];
        p.groups = [{ id: 'g', name: 'G', channel: 1, schedule: 's', lead: 'any' }];
        p.openings[0].blind = { blind: 'external-slats-80-silver', schedule: 's', group: 'g' };
      },
      /\.blind\.schedule$/,
    ],
    [
      'a lead from outside the group',
      (p) => {
        p.schedules = [{ id: 's', name: 'S', rules: [], minMinutesBetweenMoves: 0 }];
        p.groups = [{ id: 'g', name: 'G', channel: 1, schedule: 's', lead: 'south-window' }];
      },
      /groups\[0\] "G"\.lead/,
    ],
    [
      'a glazing with an id of the library',
      (p) => void (p.glazings = [library.glazings[0]]),
      /glazings\[0\] ".*"\.id/,
    ],
    [
      'a glazing that passes more than its g',
      (p) => void (p.glazings = [{ ...library.glazings[7], id: 'own', g: 0.2 }]),
      /glazings\[0\] ".*"\.solarTransmittance/,
    ],
    [
      'slats with more light than there is',
      (p) =>
        void (p.blinds = [
          {
            id: 'own',
            name: 'Own',
            source: 'made up',
            kind: 'fabric',
            position: 'external',
            openness: 0.6,
            diffuseTransmittance: 0.3,
            reflectance: 0.3,
          },
        ]),
      /blinds\[0\] "Own"\.openness/,
    ],
    [
      'airing of another room',
      (p) => {
        p.rooms.push({
          ...p.rooms[0],
          id: 'other',
          name: 'Other',
          airing: [{ ...p.rooms[0].airing[0], openings: ['south-window'] }],
        });
      },
      /rooms\[1\] "Other"\.airing\[0\] ".*"\.openings\[0\]/,
    ],
    [
      'a night warmer than the day',
      (p) => {
        const twelve = (x: number) => Array<number>(12).fill(x);
        const normals = {
          ghiKWhPerM2Day: twelve(3),
          dryBulbMean: twelve(10),
          dryBulbDailyMin: twelve(5),
          dryBulbDailyMax: twelve(15),
          dhiKWhPerM2Day: twelve(2),
        };
        normals.dryBulbDailyMin[6] = 12;
        p.climate = { kind: 'monthly', normals, seed: 1, note: '' };
      },
      /climate\.normals\.dryBulbMean\[6\]/,
    ],
    [
      'a trigger that lets go before it holds',
      (p) => {
        const when = { irradianceAbove: { at: 150, release: 200 } };
        const rules = [{ id: 'r', when, then: { kind: 'lower' as const } }];
        p.schedules = [{ id: 's', name: 'S', rules, minMinutesBetweenMoves: 0 }];
      },
      /^schedules\[0\] "S"\.rules\[0\] "r"\.when\.irradianceAbove\.release$/,
    ],
    [
      'cooling set below heating',
      (p) => void (p.rooms[0].cooling = { setPoint: 19 }),
      /^rooms\[0\] "Living room"\.cooling\.setPoint$/,
    ],
    [
      'two parts of one name',
      (p) => {
        const { envelope } = p.rooms[0];
        if (envelope.kind === 'parts') envelope.parts[1].name = envelope.parts[0].name;
      },
      /^rooms\[0\] "Living room"\.envelope\.parts\[1\] "Walls"\.name$/,
    ],
    [
      'a window of more heat loss than glass alone',
      (p) => {
        const { frame } = p.openings[0];
        p.openings[0].frame = { ...frame, Uf: 10, psiInstall: 0.5, psiSpacer: 0.3 };
        p.openings[0].glazing = 'single-clear-3';
      },
      /^openings\[0\] "South window"\.frame\.Uf$/,
    ],
    [
      'more window than the room has walls',
      (p) => void (p.openings[0] = { ...p.openings[0], width: 10, height: 10, count: 9 }),
      /^openings$/,
    ],
    ['an opening called any', (p) => void (p.openings[0].id = 'any'), /openings\[0\] ".*"\.id/],
  ];
  it.each(cases)('%s', (_, change, path) => {
    const { project, problems } = checked(change);
    expect(project).toBeUndefined();
    expect(problems).toHaveLength(1);
    expect(problems[0].path).toMatch(path);
    for (const word of ['value', 'allowed', 'fix'] as const) expect(problems[0][word]).toBeTruthy();
  });
});

describe('warnings', () => {
  const blind = { blind: 'external-slats-80-silver', schedule: 's' };
  const rules = [{ id: 'r', when: {}, then: { kind: 'tilt' as const, angle: 85 } }];
  const schedules = [{ id: 's', name: 'S', rules, minMinutesBetweenMoves: 0 }];
  const cases: [string, (p: Project) => void, RegExp][] = [
    [
      'a rule that never decides',
      (p) => {
        const rules = ['a', 'b'].map((id) => ({ id, when: {}, then: { kind: 'raise' as const } }));
        p.schedules = [{ id: 's', name: 'S', rules, minMinutesBetweenMoves: 0 }];
      },
      /^schedules\[0\] "S"\.rules\[1\] "b"$/,
    ],
    [
      'a rule that airs and heats at once',
      (p) => void (p.rooms[0].airing[0].closeBelow = 17),
      /^rooms\[0\] "Living room"\.airing\[0\] "Night airing, tilted"\.closeBelow$/,
    ],
    ['nothing to study', (p) => void (p.openings = []), /^openings$/],
    [
      'a blind nobody moves',
      (p) => void (p.openings[0].blind = { blind: blind.blind }),
      /\.blind$/,
    ],
    [
      'slats out of reach',
      (p) => Object.assign(p, { schedules }, void (p.openings[0].blind = blind)),
      /schedules\[0\] "S"\.rules\[0\] "r"\.then\.angle/,
    ],
    [
      'a group of none',
      (p) =>
        Object.assign(p, {
          schedules,
          groups: [{ id: 'g', name: 'G', channel: 1, schedule: 's', lead: 'any' }],
        }),
      /groups\[0\] "G"/,
    ],
    [
      'a roof-light in a wall',
      (p) => void (p.openings[0].kind = 'rooflight'),
      /openings\[0\] ".*"\.kind/,
    ],
    [
      'an external blind without a wind limit',
      (p) => {
        const slats = { ...library.blinds.find((b) => b.id === blind.blind)! };
        Reflect.deleteProperty(slats, 'windLimit');
        p.blinds = [{ ...slats, id: 'own' }];
        p.schedules = [{ ...schedules[0], rules: [] }];
        p.openings[0].blind = { blind: 'own', schedule: 's' };
      },
      /\.blind\.windLimit$/,
    ],
    [
      'a slat angle for a fabric',
      (p) => {
        p.schedules = [{ ...schedules[0], rules: [] }];
        p.openings[0].blind = { blind: 'internal-roller-white', schedule: 's', standingAngle: 30 };
      },
      /\.blind\.standingAngle$/,
    ],
  ];
  it.each(cases)('%s', (_, change, path) => {
    const { project, problems, warnings } = checked(change);
    expect(problems).toEqual([]);
    expect(project).toBeDefined();
    expect(warnings).toHaveLength(1);
    expect(warnings[0].path).toMatch(path);
  });
});

import { describe, expect, it } from 'vitest';
import {
  compileRoom,
  defaultRoom,
  nightAiring,
  roomDefaults,
  roomDefaultSources,
  roomCautions,
  runRoom,
  validateRoom,
  type Room,
  type RoomOpening,
  type RoomUse,
} from '../../../lib/room/index.ts';
import { formatProblem, InputError } from '../../../lib/problem/index.ts';
import { HOURS } from '../../../lib/time/index.ts';
import { calendar } from './agreement.ts';
import { nightRule, opening, studio } from './rooms.ts';

const paths = (room: Room, openings: RoomOpening[] = [opening]) => ({
  problems: validateRoom(room, openings, 'rooms[0]').problems.map((p) => p.path),
  warnings: validateRoom(room, openings, 'rooms[0]').warnings.map((p) => p.path),
});

describe('checking a room', () => {
  it('finds nothing wrong with a sound one', () => {
    for (const kind of ['light', 'medium', 'heavy'] as const) {
      expect(paths({ ...studio(kind), airing: [nightRule] })).toEqual({
        problems: [],
        warnings: [],
      });
    }
  });

  const room = studio('light');
  const wrong: [string, Partial<Room>, string][] = [
    ['no floor', { floorArea: 0 }, 'floorArea'],
    ['a floor that is no number', { floorArea: NaN }, 'floorArea'],
    ['no volume', { volume: -1 }, 'volume'],
    [
      'no air at all',
      {
        infiltration: { kind: 'ach', ach: 0 },
        ventilation: { flow: { kind: 'ach', ach: 0 }, heatRecovery: 0 },
      },
      'ventilation',
    ],
    [
      'a heat recovery in percent',
      { ventilation: { flow: { kind: 'ach', ach: 0.4 }, heatRecovery: 80 } },
      'ventilation.heatRecovery',
    ],
    ['a short profile', { people: { weekday: [1], weekend: Array(24).fill(1) } }, 'people.weekday'],
    [
      'a negative gain',
      { appliances: { weekday: Array(24).fill(-5), weekend: Array(24).fill(0) } },
      'appliances.weekday[0]',
    ],
    [
      'cooling under heating',
      { heating: { setPoint: 21 }, cooling: { setPoint: 20 } },
      'cooling.setPoint',
    ],
    [
      'a sash that shuts above where it opens',
      { airing: [{ ...nightRule, closeBelow: 24 }] },
      'airing[0].closeBelow',
    ],
    [
      'airing an opening that is not there',
      { airing: [{ ...nightRule, openings: ['attic'] }] },
      'airing[0].openings',
    ],
    ['no mass', { mass: { kind: 'value', heatCapacity: 0, massArea: 90 } }, 'mass.heatCapacity'],
    [
      'layers of no part',
      {
        mass: {
          kind: 'layers',
          surfaces: [
            {
              name: 'x',
              area: 10,
              part: 'attic',
              layers: [{ thickness: 0.1, conductivity: 1, density: 2000, specificHeat: 1000 }],
            },
          ],
        },
      },
      'mass.surfaces[0].part',
    ],
    [
      'layers that insulate more than the U-value',
      {
        mass: {
          kind: 'layers',
          surfaces: [
            {
              name: 'x',
              area: 10,
              part: 'walls',
              layers: [{ thickness: 0.6, conductivity: 0.04, density: 40, specificHeat: 1000 }],
            },
          ],
        },
      },
      'mass.surfaces[0].layers',
    ],
    [
      'two parts of one name',
      {
        mass: { kind: 'class', class: 'light' },
        envelope: {
          kind: 'parts',
          parts: [1, 2].map(() => ({ name: 'wall', area: 20, U: 0.1, boundary: 'outdoor' })),
        },
      },
      'envelope.parts[1].name',
    ],
    [
      'an hour after the day',
      { occupied: { weekday: [{ from: 0, to: 1500 }], weekend: [] } },
      'occupied.weekday[0].to',
    ],
  ];
  it.each(wrong)('%s', (_, change, field) => {
    const bad = { ...room, ...change };
    expect(paths(bad).problems).toContain(`rooms[0].${field}`);
    // What validation refuses is refused by the engine, in words a person can act on.
    expect(() => compileRoom(bad, [opening], calendar, { groundTemperature: 10 })).toThrow(
      InputError,
    );
    for (const p of validateRoom(bad, [opening]).problems) {
      expect(formatProblem(p)).toMatch(/^room\..+ \(is .+\)\. .+\.$/);
    }
  });

  it('a room that can lose no heat', () => {
    const sealed: Room = {
      ...room,
      mass: { kind: 'class', class: 'light' },
      envelope: { kind: 'parts', parts: [{ name: 'wall', area: 40, U: 0.2, boundary: 'room' }] },
    };
    expect(paths(sealed, []).problems).toContain('rooms[0].envelope');
  });

  it('glass that does not fit: an error beyond all walls, a warning beyond the outdoor ones', () => {
    expect(paths(room, [{ ...opening, area: 172 }]).problems).toContain('rooms[0].openings');
    expect(paths(room, [{ ...opening, area: 140 }])).toEqual({
      problems: [],
      warnings: ['rooms[0].openings'],
    });
  });

  it('odd but possible things are warnings', () => {
    const odd = (change: Partial<Room>) => paths({ ...room, ...change }).warnings;
    expect(odd({ volume: 38 * 12 })).toContain('rooms[0].volume');
    expect(odd({ infiltration: { kind: 'n50', n50: 6, shielding: 0.07 } })).toContain(
      'rooms[0].infiltration.n50',
    );
    expect(
      odd({ people: { weekday: Array(24).fill(2000), weekend: Array(24).fill(0) } }),
    ).toContain('rooms[0].people');
    expect(odd({ airing: [{ ...nightRule, closeBelow: 18 }] })).toContain(
      'rooms[0].airing[0].closeBelow',
    );
    const fixed: RoomOpening = { ...opening, airing: { ...opening.airing, kind: 'none' } };
    expect(paths({ ...room, airing: [nightRule] }, [fixed]).warnings).toContain(
      'rooms[0].airing[0].position',
    );
    const large: RoomOpening = { ...opening, area: 1 };
    expect(paths(room, [large]).warnings).toContain('rooms[0].openings[0].airing.width');
  });
});

describe('defaults', () => {
  it('each has its source', () => {
    expect(Object.keys(roomDefaultSources).sort()).toEqual(Object.keys(roomDefaults).sort());
    for (const source of Object.values(roomDefaultSources))
      expect(source.length).toBeGreaterThan(15);
    for (const caution of Object.values(roomCautions))
      expect(caution.english).toMatch(/^[A-Z].+\.$/);
  });

  it.each<RoomUse>(['living', 'bedroom', 'work', 'other'])('make a sound %s', (use) => {
    const room = { ...defaultRoom('r', 'Room', use, 20), airing: [nightAiring()] };
    const { problems, warnings } = validateRoom(room, [{ ...opening, area: 4 }]);
    expect(problems).toEqual([]);
    expect(warnings).toEqual([]);
    // JSON-able: what is written is read back the same.
    expect(JSON.parse(JSON.stringify(room))).toEqual(room);
    const gains = [...room.people.weekday, ...room.appliances.weekday];
    const mean = gains.reduce((a, b) => a + b, 0) / 24 / 20;
    // EN ISO 13790:2008, table G.8: 2 to 9 W/m2 by room of a dwelling, averaged over the week.
    expect(mean).toBeGreaterThan(1);
    expect(mean).toBeLessThan(10);
  });

  it('give a heating need of a very well insulated house in a cool climate', () => {
    // 15 kWh/m2 is the usual limit of such houses, with sun; a small detached room without any sun
    // at a mean of 10 C must lie above it and below that of an ordinary new house (60 kWh/m2).
    const model = compileRoom(defaultRoom('r', 'Room', 'living', 38), [opening], calendar, {
      groundTemperature: 10,
    });
    const outdoor = Float64Array.from(
      { length: HOURS },
      (_, h) => 10 - 10 * Math.cos((2 * Math.PI * h) / HOURS),
    );
    const wind = new Float64Array(HOURS).fill(3);
    const year = runRoom(model, { outdoor, wind }, new Float64Array(HOURS));
    const need = year.heating.reduce((a, b) => a + b, 0) / 1000 / 38;
    expect(need).toBeGreaterThan(15);
    expect(need).toBeLessThan(60);
  });
});

import { describe, expect, it } from 'vitest';
import { buildTypicalYear } from '../../../../lib/climate/build/index.ts';
import normals from '../../../reference/climate-normals-facades.json' with { type: 'json' };
import reference from '../../../reference/vertical-planes-tmy3.json' with { type: 'json' };
import { DIRECTIONS, months, placeOf, sum, verticalPlanes, withoutBeam } from './support.ts';
import type { Planes, Station } from './support.ts';

/*
 * Built years against the transposed hourly files of ten stations. A wall's sum may be off by 8
 * percent a year and 15 percent a month, or by 2 kWh/m2 a month: 65 Wh a day matters to no room.
 *
 * Normals do not say which half of the day is the clearer. Where the file itself has east and west
 * more than 8 percent apart from their mean in a month (thunder in the afternoon at Denver, sea fog
 * in the morning on the Pacific coast, chance in a month at Anchorage), a year with even halves must
 * miss by that much; 25 percent is allowed there. The mean of the walls that mirror each other knows
 * nothing of that and is held to 15 percent a month and 5 a year everywhere.
 */
const LOPSIDED = 0.08;
const SMALL = 2;
const MIRRORED = [
  ['N', 'N'],
  ['NE', 'NW'],
  ['E', 'W'],
  ['SE', 'SW'],
  ['S', 'S'],
] as const;

const stations = normals.stations as unknown as (Station & { code: string })[];

function theirs(station: { code: string }): Planes {
  return reference.stations.find((s) => s.code === station.code)!.monthly as Planes;
}

const lopsided = (planes: Planes, m: number) =>
  Math.abs(planes.E[m] - planes.W[m]) / (planes.E[m] + planes.W[m]);

function check(built: Planes, file: Planes): void {
  const uneven = Math.abs(sum(file.E) - sum(file.W)) / (sum(file.E) + sum(file.W));
  for (const wall of DIRECTIONS) {
    const year = sum(built[wall]) / sum(file[wall]) - 1;
    // Portland, Oregon, is 6.5 percent lopsided over the year; its east wall is 7 to 9 percent off.
    expect(Math.abs(year), `${wall} year ${year}`).toBeLessThan(uneven > 0.06 ? 0.095 : 0.08);
    for (const m of months) {
      const gap = built[wall][m] - file[wall][m];
      const share = lopsided(file, m) > LOPSIDED ? 0.25 : 0.15;
      const allowed = Math.max(share * file[wall][m], SMALL);
      expect(Math.abs(gap), `${wall} month ${m + 1}: ${gap / file[wall][m]}`).toBeLessThan(allowed);
    }
  }
}

function checkMirrored(built: Planes, file: Planes, monthly: number, yearly: number): void {
  for (const [a, b] of MIRRORED) {
    const of = (p: Planes, m: number) => (p[a][m] + p[b][m]) / 2;
    const year = sum(months.map((m) => of(built, m))) / sum(months.map((m) => of(file, m))) - 1;
    expect(Math.abs(year), `${a}${b} year ${year}`).toBeLessThan(yearly);
    for (const m of months) {
      const gap = of(built, m) - of(file, m);
      const allowed = Math.max(monthly * of(file, m), SMALL);
      expect(Math.abs(gap), `${a}${b} month ${m + 1}: ${gap / of(file, m)}`).toBeLessThan(allowed);
    }
  }
}

describe('vertical planes of built years against hourly files', () => {
  for (const station of stations) {
    it(`${station.station}, five seeds, from global and diffuse`, () => {
      const file = theirs(station);
      for (const seed of [1, 2, 3, 4, 5]) {
        const year = buildTypicalYear(withoutBeam(station), placeOf(station), { seed });
        const built = verticalPlanes(year);
        check(built, file);
        checkMirrored(built, file, 0.15, 0.05);
      }
    });
  }

  // With direct normal the low sun is known: mirrored walls within 12 percent a month, 3.5 a year.
  for (const station of stations) {
    it(`${station.station}, two seeds, from global, diffuse and direct normal`, () => {
      const file = theirs(station);
      for (const seed of [1, 2]) {
        const built = verticalPlanes(buildTypicalYear(station, placeOf(station), { seed }));
        check(built, file);
        checkMirrored(built, file, 0.12, 0.035);
      }
    });
  }

  it('keeps most months far inside the limits', () => {
    let squares = 0;
    let count = 0;
    for (const station of stations) {
      const file = theirs(station);
      const built = verticalPlanes(buildTypicalYear(station, placeOf(station)));
      for (const wall of DIRECTIONS) {
        for (const m of months) {
          squares += (built[wall][m] / file[wall][m] - 1) ** 2;
          count++;
        }
      }
    }
    // 4 percent is what the files' own east-west difference alone comes to.
    expect(Math.sqrt(squares / count)).toBeLessThan(0.05);
  });
});

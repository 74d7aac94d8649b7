import { newOpening, newWall, defaultProject } from '../../../lib/project/index.ts';
import type { Project } from '../../../lib/project/index.ts';
import { defaultRoom } from '../../../lib/room/index.ts';
import type { TypicalYear } from '../../../lib/climate/index.ts';
import { stations } from '../../../src/library/climates.ts';
import { yearOf } from '../../../src/library/year.ts';

/** A fixed pane in a wall of the given azimuth; the plainest opening there is. */
export interface Pane {
  azimuth: number;
  width: number;
  height: number;
  blind?: string;
  room?: number;
}

/**
 * A house of fixed panes near Burlington: light rooms of 20 m2 with three air changes an hour by fan
 * while it is warm, no airing, no blind but those given.
 */
export function paneHouse(panes: readonly Pane[], rooms = 1): Project {
  const base = defaultProject();
  const walls = panes.map(({ azimuth }, i) => ({ ...newWall(azimuth), id: `wall-${i}` }));
  return {
    ...base,
    walls,
    rooms: Array.from({ length: rooms }, (_, i) => ({
      ...defaultRoom(`room-${i}`, `Room ${i}`, 'living', 20),
      ventilation: { flow: { kind: 'ach', ach: 3 }, heatRecovery: 0.8, bypassAbove: 21 },
    })),
    openings: panes.map(({ width, height, blind, room = 0 }, i) => ({
      ...newOpening('fixed', { wall: walls[i].id, room: `room-${room}` }),
      id: `pane-${i}`,
      name: `Pane ${i}`,
      width,
      height,
      ...(blind === undefined ? {} : { blind: { blind, schedule: 'sunny' } }),
    })),
    schedules: [
      {
        id: 'sunny',
        name: 'Down in the sun',
        rules: [
          {
            id: 'sun',
            when: { months: [4, 5, 6, 7, 8, 9], irradianceAbove: { at: 150, release: 100 } },
            then: { kind: 'lower' },
          },
        ],
        minMinutesBetweenMoves: 0,
      },
    ],
  };
}

let year: TypicalYear | undefined;
/** The typical year of those houses; made once. */
export function paneYear(): TypicalYear {
  year ??= yearOf(defaultProject(), stations);
  return year;
}

/** Numbers from 0 to 1 that are the same every time (Lehmer's generator, Park & Miller 1988). */
export function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}

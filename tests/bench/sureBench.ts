// Times how sure and the search over subsets through the worker pool: scheme-years and subsets a
// second with one worker and with two, in the same run. Called by bench.ts; no test asserts a time.
import { readFileSync } from 'node:fs';
import { blocksOf } from '../../lib/decide/index.ts';
import { defaultProject, newOpening, newWall, parseProject } from '../../lib/project/index.ts';
import type { Project } from '../../lib/project/index.ts';
import { defaultRoom } from '../../lib/room/index.ts';
import { presetSchedules } from '../../lib/schedule/index.ts';
import { stations } from '../../src/library/climates.ts';
import { blinds, glazings } from '../../src/library/index.ts';
import { createNodePool } from '../../src/pool/node.ts';
import type { Pool } from '../../src/pool/pool.ts';

const OPENINGS = 12;

/** The studio in so many schemes: schedules a little different, as a search makes them. */
function schemesOf(
  project: Project,
  count: number,
): { id: string; name: string; project: Project }[] {
  return Array.from({ length: count }, (_, i) => {
    const schedules = project.schedules.map((schedule) => ({
      ...schedule,
      minMinutesBetweenMoves: 15 * (i % 8),
      rules: schedule.rules.map((rule) => {
        const { irradianceAbove } = rule.when;
        if (!irradianceAbove) return rule;
        const at = irradianceAbove.at + Math.floor(i / 8);
        return { ...rule, when: { ...rule.when, irradianceAbove: { ...irradianceAbove, at } } };
      }),
    }));
    return { id: `scheme-${i}`, name: `Scheme ${i}`, project: { ...project, schedules } };
  });
}

/** The same house with no rule that asks for the room's temperature. */
function withoutRoomRules(project: Project): Project {
  const schedules = project.schedules.map((schedule) => ({
    ...schedule,
    rules: schedule.rules.map((rule) => {
      const { roomAbove: _above, roomBelow: _below, ...when } = rule.when;
      return { ...rule, when };
    }),
  }));
  return { ...project, schedules };
}

/** One room of 60 m2 with twelve windows to four sides. */
function twelveWindows(): Project {
  const base = defaultProject();
  const walls = [0, 90, 180, 270].map((azimuth) => newWall(azimuth));
  return {
    ...base,
    walls,
    rooms: [{ ...defaultRoom('room', 'Room', 'living', 60) }],
    openings: Array.from({ length: OPENINGS }, (_, i) => ({
      ...newOpening('window', { wall: walls[i % 4].id, room: 'room' }),
      id: `window-${i}`,
      width: 0.8 + 0.1 * i,
    })),
    schedules: presetSchedules('north').map((p) => p.schedule),
  };
}

interface Timed {
  seconds: number;
  /** Of all threads together. */
  processorSeconds: number;
  count: number;
}

async function timed(count: number, run: () => Promise<unknown>): Promise<Timed> {
  const start = performance.now();
  const before = process.cpuUsage();
  await run();
  const { user, system } = process.cpuUsage(before);
  const seconds = (performance.now() - start) / 1000;
  return { seconds, processorSeconds: (user + system) / 1e6, count };
}

function line(name: string, aim: string, [one, two]: readonly Timed[]): string {
  const rate = ({ seconds, count }: Timed) => (count / seconds).toFixed(0);
  const gain = (one.seconds / one.count / (two.seconds / two.count)).toFixed(2);
  const each = ((1000 * two.processorSeconds) / two.count).toFixed(1);
  return (
    `${two.seconds.toFixed(1).padStart(9)} s   ${name}: ${rate(one)} a second with one worker, ` +
    `${rate(two)} with two (x ${gain}), ${each} ms of processor each; aim ${aim}`
  );
}

/** Runs every bench with one worker and with two; each pool is warmed up first. */
export async function sureBench(): Promise<void> {
  const library = { glazings, blinds, stations };
  const file = new URL('../../data/examples/studio.shadewright.json', import.meta.url);
  const studio = parseProject(readFileSync(file, 'utf8'), library);
  const rows: [string, string, (pool: Pool, part: number) => Promise<Timed>][] = [
    ['1,000 scheme-years of the studio', '4 s', schemeYears(studio, 1000)],
    [
      '1,000 scheme-years of the studio, no rule asking for the room',
      '4 s',
      schemeYears(withoutRoomRules(studio), 1000),
    ],
    [`${2 ** OPENINGS} subsets of ${OPENINGS} openings`, '15 s', allSubsets(twelveWindows())],
  ];
  const pools = [createNodePool({ workers: 1 }), createNodePool({ workers: 2 })];
  try {
    for (const [name, aim, bench] of rows) {
      // One worker does a quarter of the work: rates are compared, not sums.
      const results = [await bench(pools[0], 0.25), await bench(pools[1], 1)];
      console.log(line(name, aim, results));
    }
  } finally {
    await Promise.all(pools.map((pool) => pool.close()));
  }
}

function schemeYears(project: Project, count: number) {
  const schemes = schemesOf(project, count);
  return async (pool: Pool, part: number) => {
    await pool.schemes({ project }, schemes.slice(0, 8));
    const own = schemes.slice(0, count * part);
    return timed(own.length, () => pool.schemes({ project }, own));
  };
}

function allSubsets(project: Project) {
  const part = blocksOf(project).findIndex((block) => block.openings.length === OPENINGS);
  const choices = Array.from({ length: 2 ** OPENINGS }, (_, mask) =>
    Array.from({ length: OPENINGS }, (__, i) => (mask >> i) & 1),
  );
  return async (pool: Pool, share: number) => {
    await pool.subsets({ project }, part, choices.slice(0, 64));
    const own = choices.slice(0, choices.length * share);
    return timed(own.length, () => pool.subsets({ project }, part, own));
  };
}

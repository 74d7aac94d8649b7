// Times the engine on the example house: medians of many runs, and their ratio to a yardstick loop
// timed in the same run, so that figures of different machines and days can be set side by side.
import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { TypicalYear } from '../../lib/climate/index.ts';
import { parseProject } from '../../lib/project/index.ts';
import type { Project } from '../../lib/project/index.ts';
import { createEngine } from '../../lib/study/index.ts';
import type { Engine } from '../../lib/study/index.ts';
import { stations } from '../../src/library/climates.ts';
import { blinds, glazings } from '../../src/library/index.ts';
import { yearOf } from '../../src/library/year.ts';
import { sureBench } from './sureBench.ts';

const library = { glazings, blinds, stations };
const STUDIO = new URL('../../data/examples/studio.shadewright.json', import.meta.url);

function median(values: number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)];
}

/** Median milliseconds of `runs` calls after as many to warm up. */
function time(runs: number, call: (i: number) => void): number {
  for (let i = 0; i < runs; i++) call(i);
  return median(
    Array.from({ length: runs }, (_, i) => {
      const start = performance.now();
      call(runs + i);
      return performance.now() - start;
    }),
  );
}

/** Ten million multiply-adds with a square root in each: about what a year's light costs. */
function yardstick(): number {
  let sum = 0;
  for (let i = 1; i <= 10_000_000; i++) sum += Math.sqrt(i * 1.0001 + sum * 1e-9);
  return sum;
}

/** The house as it is, or with no room and no rule that asks for one. */
function house(withRooms: boolean): Project {
  const project = parseProject(readFileSync(STUDIO, 'utf8'), library);
  if (withRooms) return project;
  const schedules = project.schedules.map((schedule) => ({
    ...schedule,
    rules: schedule.rules.map((rule) => {
      const { roomAbove: _above, roomBelow: _below, ...when } = rule.when;
      return { ...rule, when };
    }),
  }));
  return { ...project, schedules, rooms: [] };
}

/** The same house with every schedule a little different, as a hand on the schedule desk makes it. */
function nudged(project: Project, i: number): Project {
  const schedules = project.schedules.map((schedule) => ({
    ...schedule,
    minMinutesBetweenMoves: 15 * (i % 37),
    rules: schedule.rules.map((rule) => {
      const { irradianceAbove } = rule.when;
      if (!irradianceAbove) return rule;
      const at = irradianceAbove.at + (i % 53);
      return { ...rule, when: { ...rule.when, irradianceAbove: { ...irradianceAbove, at } } };
    }),
  }));
  return { ...project, schedules };
}

function run(engine: Engine, project: Project, year: TypicalYear): void {
  engine.run({ project, library, year });
}

/** Median of three fresh processes: parse nothing before, one run each. */
function firstRuns(withRooms: boolean): number {
  const self = fileURLToPath(import.meta.url);
  const once = () =>
    Number(
      execFileSync('npx', ['tsx', self, '--first', String(withRooms)], { encoding: 'utf8' }).trim(),
    );
  return median([once(), once(), once()]);
}

async function report(): Promise<void> {
  const unit = time(7, yardstick);
  const lines: [string, number][] = [['yardstick loop', unit]];
  const engine = createEngine();
  for (const withRooms of [false, true]) {
    const word = withRooms ? 'with room' : 'without room';
    const project = house(withRooms);
    const year = yearOf(project, stations);
    const cold = time(30, () => {
      engine.cache.clear();
      run(engine, project, year);
    });
    lines.push([`whole year, nothing kept, ${word}`, cold]);
    engine.cache.clear();
    run(engine, project, year);
    engine.cache.costs.clear();
    const change = time(120, (i) => run(engine, nudged(project, i), year));
    lines.push([`schedule change only, ${word}`, change]);
    lines.push([`first run of a fresh process, ${word}`, firstRuns(withRooms)]);
  }
  const project = house(true);
  lines.push(['typical year from monthly normals', time(20, () => yearOf(project, stations))]);

  console.log(`house: ${project.openings.length} openings, ${project.rooms.length} room`);
  console.log('median ms   x yardstick');
  for (const [name, ms] of lines) {
    console.log(`${ms.toFixed(2).padStart(9)}   ${(ms / unit).toFixed(3).padStart(8)}   ${name}`);
  }
  stageSplit(engine, project);
  await sureBench();
  console.log(`peak memory: ${Math.round(process.resourceUsage().maxRSS / 1024)} MB`);
}

/** Mean cost of each stage over warm runs with nothing kept. */
function stageSplit(engine: Engine, project: Project): void {
  const year = yearOf(project, stations);
  const totals = new Map<string, number>();
  const runs = 20;
  for (let i = 0; i < runs; i++) {
    engine.cache.clear();
    run(engine, project, year);
    for (const [stage, cost] of engine.cache.costs) {
      totals.set(stage, (totals.get(stage) ?? 0) + cost.milliseconds / runs);
    }
  }
  console.log('stage split of a whole year, mean ms:');
  for (const [stage, ms] of [...totals].sort((a, b) => b[1] - a[1])) {
    if (ms >= 0.05) console.log(`${ms.toFixed(2).padStart(9)}   ${stage}`);
  }
}

if (process.argv[2] === '--first') {
  const project = house(process.argv[3] === 'true');
  const year = yearOf(project, stations);
  const start = performance.now();
  run(createEngine(), project, year);
  console.log(performance.now() - start);
} else if (existsSync(STUDIO)) await report();

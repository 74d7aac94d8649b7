import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { serializeProject } from '../../../lib/project/index.ts';
import { searchCommand } from '../../../src/cli/searchCommand.ts';
import { paneHouse } from '../../lib/decide/support.ts';
import { runner } from './run.ts';

let folder: string;
let house: string;
let mild: string;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'shadewright-search-'));
  house = join(folder, 'house.json');
  mild = join(folder, 'mild.json');
  const west = { azimuth: 270, width: 1.5, height: 2, blind: 'external-screen-zip' };
  const north = { azimuth: 0, width: 1, height: 1 };
  const project = paneHouse([west, north]);
  writeFileSync(house, serializeProject(project));
  const settings = { ...project.settings, overheatingShare: 0.5 };
  writeFileSync(mild, serializeProject({ ...project, settings }));
});

afterAll(() => rmSync(folder, { recursive: true, force: true }));

const run = runner(searchCommand);

describe('search', () => {
  it('prints the rules first, then the table against the references, and writes them', async () => {
    const out = join(folder, 'out');
    const { code, printed } = await run(house, '--target', 'wall-0', '--out', out);
    expect(code).toBe(0);
    const [rule, outcome, hindsight] = printed.split('\n');
    expect(rule).toMatch(/^[^:]+, West wall: down at .*, up at .*\.$/);
    expect(outcome).toMatch(/^ {2}\d+ hours over, criterion kept \(\d+ hours with the blinds up\)/);
    expect(hindsight).toMatch(/^ {2}With hindsight, lowered on \d+ days: /);
    const parts = [
      'West wall: schedules and references',
      'timer ',
      'sun on the facade ',
      'room temperature ',
      'with hindsight ',
      'as planned ',
      'always up ',
      'always down in season ',
      'timer: ',
      'Price: 1 an hour with somebody in',
      'caution: ',
    ];
    const places = parts.map((part) => printed.indexOf(`\n${part}`));
    const inLines = parts.map((part, i) => (places[i] < 0 ? printed.indexOf(part) : places[i]));
    expect(inLines.every((place) => place > 0)).toBe(true);
    expect(printed.match(/\(best\)/g)).toHaveLength(1);

    const written = JSON.parse(readFileSync(join(out, 'search.json'), 'utf8'));
    expect(written.format).toBe('shadewright-search');
    expect(written.targets).toHaveLength(1);
    expect(`${written.targets[0].found.lines.join('; ')}.`).toBe(rule);
    expect(written.targets[0].words[0]).toBe(rule);
    expect(written.targets[0].warnings.length).toBeGreaterThan(0);
    for (const warning of written.targets[0].warnings) {
      expect(printed).toContain(`note: ${warning}\n`);
    }
  });

  it('takes every facade with a blind where none is named, and prints JSON alone', async () => {
    const { code, printed } = await run(mild, '--json');
    expect(code).toBe(0);
    const { targets } = JSON.parse(printed);
    expect(targets.map((t: { target: object }) => t.target)).toEqual([{ facade: 'wall-0' }]);
    expect(targets[0].choice).toBe('alwaysUp');
    expect((await run(mild)).printed).toMatch(
      /^All year, West wall: stays up\.\n {2}\d+ hours over/,
    );
  });

  it('refuses bad files and options with exit code 2', async () => {
    expect((await run('no-such-file.json')).complaints).toContain('no such file');
    expect((await run('no-such-file.json')).code).toBe(2);
    expect((await run(house, '--colour')).code).toBe(2);
    const unknown = await run(house, '--target', 'attic');
    expect(unknown.code).toBe(2);
    expect(unknown.complaints).toMatch(/^error: --target: .*"attic".*wall-0, wall-1/);
    for (const reserve of ['100', '-1', 'much', '']) {
      const { code, complaints } = await run(house, '--reserve', reserve);
      expect(code).toBe(2);
      expect(complaints).toContain('error: --reserve: is out of range');
    }
    const bad = spawnSync('npm', ['run', '-s', 'search', '--', house, '--target', 'attic'], {
      encoding: 'utf8',
    });
    expect(bad.status).toBe(2);
    expect(bad.stderr).toContain('error: ');
    expect(bad.stderr).not.toMatch(/^\s+at /m);
  });
});

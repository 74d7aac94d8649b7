import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { blockJudge, blocksOf } from '../../../lib/decide/index.ts';
import { InputError } from '../../../lib/problem/index.ts';
import { createEngine } from '../../../lib/study/index.ts';
import {
  caseRunner,
  casesOf,
  compareSchemes,
  decidedFor,
  questionOf,
  stockSchemes,
  summarise,
} from '../../../lib/sure/index.ts';
import type { CaseResult } from '../../../lib/sure/index.ts';
import { createNodePool } from '../../../src/pool/node.ts';
import { workersFor } from '../../../src/pool/pool.ts';
import type { Pool } from '../../../src/pool/pool.ts';
import { paneHouse, paneYear } from '../../lib/decide/support.ts';
import { library } from '../../lib/study/support.ts';
import { sureInput } from '../../lib/sure/support.ts';

const project = paneHouse([
  { azimuth: 270, width: 1.6, height: 2, blind: 'external-screen-zip' },
  { azimuth: 90, width: 1.2, height: 1.4 },
]);
const input = sureInput(project);
const decided = decidedFor(input);
const study = { project, library, year: paneYear() };

let one: Pool;
let two: Pool;
beforeAll(() => {
  one = createNodePool({ workers: 1 });
  two = createNodePool({ workers: 2 });
});
afterAll(async () => {
  await Promise.all([one.close(), two.close()]);
});

describe('the worker pool', () => {
  it('says the same with one worker, with two and without any, byte for byte', async () => {
    const all = casesOf(1);
    const cases = [0, 1, 2, 20, 24, 26, 28].map((i) => all[i]);
    const question = questionOf(input, decided);
    const found = (results: CaseResult[]) => JSON.stringify(summarise(question, cases, results));
    const alone = found(cases.map(caseRunner(question)));
    for (const pool of [one, two]) {
      expect(found(await pool.cases({ project }, decided, cases))).toBe(alone);
    }
  });

  it('gives schemes and subsets in their order', async () => {
    const schemes = stockSchemes(project, library);
    expect(await two.schemes({ project }, schemes)).toEqual(compareSchemes(study, schemes));
    const choices = Array.from({ length: 70 }, (_, i) => [i & 1, (i >> 1) & 1]);
    const [block] = blocksOf(project);
    const judge = blockJudge(createEngine(), study, block, block.openings, 'north');
    const alone = choices.map((choice) => judge(Uint8Array.from(choice)));
    expect(await two.subsets({ project }, 0, choices)).toEqual(alone);
  });

  it('tells how far it is, from nothing to all, each step once', async () => {
    const seen: number[] = [];
    const schemes = stockSchemes(project, library);
    const onProgress = ({ done, of }: { done: number; of: number }) => {
      expect(of).toBe(schemes.length);
      seen.push(done);
    };
    await two.schemes({ project }, schemes, { onProgress });
    expect(seen).toEqual(Array.from({ length: schemes.length + 1 }, (_, i) => i));
  });

  it('stops when it is told to, and goes on working afterwards', async () => {
    const already = AbortSignal.abort(new Error('not now'));
    await expect(two.sure({ project }, decided, {}, { signal: already })).rejects.toThrow(
      'not now',
    );
    const control = new AbortController();
    const onProgress = ({ done }: { done: number }) => {
      if (done === 2) control.abort(new Error('enough'));
      if (control.signal.aborted) expect(done).toBe(2);
    };
    const stopped = two.sure({ project }, decided, {}, { signal: control.signal, onProgress });
    await expect(stopped).rejects.toThrow('enough');
    const [first] = stockSchemes(project, library);
    expect(await two.schemes({ project }, [first])).toEqual(compareSchemes(study, [first]));
  });

  it('hands on what is wrong with the input as such', async () => {
    const climate = { kind: 'station' as const, station: 'nowhere', seed: 1 };
    const lost = one.schemes({ project: { ...project, climate } }, stockSchemes(project, library));
    await expect(lost).rejects.toBeInstanceOf(InputError);
    await expect(lost).rejects.toThrow(/climate.station/);
  });

  it('makes no more workers than there are cores, and at least one', () => {
    expect([workersFor(8), workersFor(8, 2), workersFor(2, 8), workersFor(NaN, 0)]).toEqual([
      8, 2, 2, 1,
    ]);
  });
});

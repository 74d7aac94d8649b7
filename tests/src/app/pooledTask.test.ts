import { expect, it, vi } from 'vitest';
import { InputError } from '../../../lib/problem/index.ts';

vi.mock('../../../src/pool/browser.ts', () => ({
  createBrowserPool: () => ({ close: () => Promise.resolve() }),
}));

// Nothing reads them again here, so that state is a plain value.
const state = (value: unknown) => value;
vi.stubGlobal('$state', Object.assign(state, { raw: state }));
const { PooledTask } = await import('../../../src/app/state/pooled.svelte.ts');

const problem = { path: 'climate.normals.wind', message: 'has 2 values', fix: 'Give twelve.' };
const failing = (error: Error) => () => Promise.reject(error);

it('a long run tells bad input by its problems, and only a fault in the words of the program', async () => {
  const task = new PooledTask();
  expect(await task.run(failing(new InputError(problem)))).toBeUndefined();
  expect([task.problems, task.fault, task.busy]).toEqual([[problem], undefined, false]);
  await task.run(failing(new Error('no worker')));
  expect([task.problems, task.fault]).toEqual([[], 'Error: no worker']);
  expect(await task.run(() => Promise.resolve(7))).toBe(7);
  expect([task.problems, task.fault]).toEqual([[], undefined]);
});

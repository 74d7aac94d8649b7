import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { Autosave } from '../../../../src/app/files/autosave.ts';
import type { SavingState } from '../../../../src/app/files/autosave.ts';

beforeEach(() => vi.useFakeTimers());
afterEach(() => vi.useRealTimers());

function recorder(takes = 0) {
  const written: number[] = [];
  const states: SavingState[] = [];
  let failing = false;
  let running = 0;
  let most = 0;
  const autosave = new Autosave<number>(
    async (value) => {
      most = Math.max(most, ++running);
      if (takes > 0) await new Promise((done) => setTimeout(done, takes));
      running--;
      if (failing) throw new Error('no room');
      written.push(value);
    },
    { rest: 400, most: 3000, onstate: (state) => states.push(state) },
  );
  return {
    autosave,
    written,
    states,
    fail: (on: boolean) => (failing = on),
    mostAtOnce: () => most,
  };
}

describe('autosave', () => {
  it('writes the last of quick changes once, after a rest', async () => {
    const { autosave, written, states } = recorder();
    for (const value of [1, 2, 3]) {
      autosave.change(value);
      await vi.advanceTimersByTimeAsync(300);
    }
    expect(written).toEqual([]);
    await vi.advanceTimersByTimeAsync(100);
    expect(written).toEqual([3]);
    expect(states.at(-1)).toBe('idle');
    expect(autosave.pending).toBe(false);
  });

  it('does not wait for ever while changes keep coming', async () => {
    const { autosave, written } = recorder();
    for (let value = 0; value < 40; value++) {
      autosave.change(value);
      await vi.advanceTimersByTimeAsync(100);
    }
    // 4 s of changes a tenth of a second apart: one write after 3 s.
    expect(written).toHaveLength(1);
    expect(written[0]).toBe(29);
  });

  it('never writes twice at once and ends on the newest value', async () => {
    const { autosave, written, mostAtOnce } = recorder(1000);
    autosave.change(1);
    await vi.advanceTimersByTimeAsync(500);
    autosave.change(2);
    await vi.advanceTimersByTimeAsync(500);
    autosave.change(3);
    await vi.advanceTimersByTimeAsync(5000);
    expect(written.at(-1)).toBe(3);
    expect(written).toEqual([...written].sort());
    expect(mostAtOnce()).toBe(1);
  });

  it('keeps a value that could not be written, for the next change or flush', async () => {
    const { autosave, written, states, fail } = recorder();
    fail(true);
    autosave.change(7);
    await vi.advanceTimersByTimeAsync(400);
    expect(states.at(-1)).toBe('failed');
    expect(autosave.pending).toBe(true);
    fail(false);
    await autosave.flush();
    expect(written).toEqual([7]);
    expect(autosave.pending).toBe(false);
  });

  it('does not let a failed value overwrite a newer one', async () => {
    const { autosave, written, fail } = recorder(200);
    fail(true);
    autosave.change(1);
    await vi.advanceTimersByTimeAsync(450);
    autosave.change(2);
    await vi.advanceTimersByTimeAsync(200);
    fail(false);
    await vi.advanceTimersByTimeAsync(5000);
    expect(written).toEqual([2]);
  });

  it('writes at once when flushed, and nothing once dropped', async () => {
    const { autosave, written } = recorder();
    autosave.change(1);
    await autosave.flush();
    expect(written).toEqual([1]);
    autosave.change(2);
    autosave.drop();
    await vi.advanceTimersByTimeAsync(5000);
    expect(written).toEqual([1]);
  });
});

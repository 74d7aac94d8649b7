import { describe, expect, it } from 'vitest';
import { StepMerge } from '../../../src/app/state/stepMerge.ts';

describe('edits that are one step', () => {
  it('are those of one field shortly after one another', () => {
    const merge = new StepMerge();
    expect(merge.joins('width', 0)).toBe(false);
    expect(merge.joins('width', 1000)).toBe(true);
    expect(merge.joins('width', 2300)).toBe(false);
  });

  it('are all those of a drag, however long the hand rests in it', () => {
    const merge = new StepMerge();
    merge.hold(0);
    expect(merge.joins('turn', 10)).toBe(false);
    expect(merge.joins('turn', 9000)).toBe(true);
    merge.release();
    expect(merge.joins('turn', 19_000)).toBe(false);
  });

  it('are not those of two drags of one handle with a pause between', () => {
    const merge = new StepMerge();
    merge.hold(0);
    merge.joins('turn', 10);
    merge.release();
    merge.hold(1500);
    expect(merge.joins('turn', 1510)).toBe(false);
  });

  it('are not those of two kinds, nor of none', () => {
    const merge = new StepMerge();
    merge.hold(0);
    merge.joins('width', 0);
    expect(merge.joins('height', 1)).toBe(false);
    merge.joins(undefined, 2);
    expect(merge.joins(undefined, 3)).toBe(false);
  });

  it('end where the next is to begin a step of its own', () => {
    const merge = new StepMerge();
    merge.joins('width', 0);
    merge.forget();
    expect(merge.joins('width', 1)).toBe(false);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Judged, MOST_EXACT, searchBlinds } from '../../../lib/decide/index.ts';
import type { Judge, Outcome } from '../../../lib/decide/index.ts';

/** All choices of a small number of candidates. */
function everyChoice(count: number): Uint8Array[] {
  return Array.from({ length: 2 ** count }, (_, mask) =>
    Uint8Array.from({ length: count }, (__, i) => (mask >> i) & 1),
  );
}

interface Toy {
  saves: number[];
  /** Whether each blind saves less beside others than alone. */
  curved: boolean;
  start: number;
  limit: number;
  prices: number[];
  /** Hours that a choice of an odd number of blinds has on top: harm of one more blind. */
  harm: number;
}

/** A made-up room: blinds save hours, each by itself or less beside others. */
function judgeOf({ saves, curved, start, limit, harm }: Toy): Judge {
  return (choice): Outcome => {
    const sum = saves.reduce((s, x, i) => s + x * choice[i], 0);
    const blinds = choice.reduce((s, x) => s + x, 0);
    const saved = curved ? 500 * (1 - Math.exp(-sum / 500)) : sum;
    const hours = Math.max(0, Math.round(start - saved)) + harm * (blinds % 2);
    return { broken: hours > limit ? 1 : 0, hours };
  };
}

const toy = (least: number, most: number, harm: fc.Arbitrary<number>): fc.Arbitrary<Toy> =>
  fc.integer({ min: least, max: most }).chain((count) =>
    fc.record({
      saves: fc.array(fc.integer({ min: 0, max: 200 }), { minLength: count, maxLength: count }),
      curved: fc.boolean(),
      start: fc.integer({ min: 0, max: 1000 }),
      limit: fc.integer({ min: 0, max: 600 }),
      prices: fc.array(fc.integer({ min: 1, max: 4 }), { minLength: count, maxLength: count }),
      harm,
    }),
  );

const cost = (choice: Uint8Array, prices: number[]) =>
  prices.reduce((sum, price, i) => sum + price * choice[i], 0);

describe('exact search', () => {
  function equalsBruteForce(house: Toy) {
    const count = house.saves.length;
    const judge = judgeOf(house);
    const all = everyChoice(count).map((choice) => ({
      cost: cost(choice, house.prices),
      size: choice.reduce((s, x) => s + x, 0),
      ...judge(choice),
    }));
    const found = searchBlinds(new Judged(count, judge), house.prices);
    expect(found.exact).toBe(true);
    const kept = all.filter((c) => c.broken === 0);
    if (kept.length === 0) expect(found.smallest).toBeUndefined();
    else {
      const least = Math.min(...kept.map((c) => c.cost));
      expect(found.smallest!.cost).toBe(least);
      expect(found.smallest!.outcome.hours).toBe(
        Math.min(...kept.filter((c) => c.cost === least).map((c) => c.hours)),
      );
      expect(found.leastCost).toBe(least);
    }
    for (let size = 0; size <= count; size++) {
      const same = all.filter((c) => c.size === size);
      const broken = Math.min(...same.map((c) => c.broken));
      const hours = Math.min(...same.filter((c) => c.broken === broken).map((c) => c.hours));
      expect(found.front[size].outcome).toEqual({ broken, hours });
    }
  }

  it('equals looking at every set, where blinds only ever help', () => {
    fc.assert(fc.property(toy(1, 7, fc.constant(0)), equalsBruteForce), {
      numRuns: 150,
      seed: 8,
    });
  });

  it('equals looking at every set, where one more blind can do a little harm', () => {
    const harm = fc.integer({ min: 1, max: 10 });
    fc.assert(fc.property(toy(2, 6, harm), equalsBruteForce), { numRuns: 150, seed: 9 });
  });

  it('looks at a small part of the sets of twelve', () => {
    const saves = [200, 160, 120, 90, 60, 40, 30, 20, 10, 5, 3, 2];
    const house = {
      saves,
      curved: false,
      start: 900,
      limit: 500,
      prices: saves.map(() => 1),
      harm: 0,
    };
    const found = searchBlinds(new Judged(12, judgeOf(house)), house.prices);
    // 200 + 160 saves 360 of the 400 asked for; no three are needed but with 90 or less beside them.
    expect(found.smallest!.cost).toBe(3);
    expect(found.smallest!.choice.slice(0, 3)).toEqual(new Uint8Array([1, 1, 1]));
    expect(found.evaluations).toBeLessThan(2 ** 12 / 4);
  });
});

describe('greedy search', () => {
  const prices = Array<number>(MOST_EXACT + 1).fill(1);

  it('is never better than the best of all sets, and its bound never above it', () => {
    const houses = toy(MOST_EXACT + 1, MOST_EXACT + 1, fc.constant(0));
    fc.assert(
      fc.property(houses, (house) => {
        const judge = judgeOf(house);
        const { prices } = house;
        const found = searchBlinds(new Judged(house.saves.length, judge), prices);
        expect(found.exact).toBe(false);
        const kept = everyChoice(house.saves.length).filter((c) => judge(c).broken === 0);
        if (kept.length === 0) return expect(found.smallest).toBeUndefined();
        const least = Math.min(...kept.map((c) => cost(c, prices)));
        expect(found.smallest!.outcome.broken).toBe(0);
        expect(found.smallest!.cost).toBeGreaterThanOrEqual(least);
        expect(found.leastCost).toBeLessThanOrEqual(least);
      }),
      { numRuns: 12, seed: 4 },
    );
  });

  it('makes no promise where a blind was seen to break a room', () => {
    const judge: Judge = (choice) => {
      const blinds = choice.reduce((s, x) => s + x, 0);
      return { broken: blinds === 1 || blinds > 3 ? 1 : 0, hours: 100 - blinds };
    };
    const found = searchBlinds(new Judged(prices.length, judge), prices);
    expect(found.creep.broken).toBe(1);
    expect(found.leastCost).toBe(0);
  });
});

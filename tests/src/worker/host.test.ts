import { beforeAll, describe, expect, it } from 'vitest';
import studio from '../../../data/examples/studio.shadewright.json' with { type: 'json' };
import { HOURS, STEPS, STEPS_PER_HOUR } from '../../../lib/time/index.ts';
import type { StudySummary } from '../../../src/worker/api.ts';
import { EngineHost } from '../../../src/worker/host.ts';

const host = new EngineHost();
let summary: StudySummary;

beforeAll(async () => {
  const reply = await host.run(studio);
  if (!reply.ok) throw new Error(JSON.stringify(reply.problems));
  summary = reply.summary;
});

const sum = (values: ArrayLike<number>) => Array.from(values).reduce((a, b) => a + b, 0);

describe('the series of the whole house', () => {
  // The same hours are added up in another order: only rounding differs.
  it.each(['incident', 'sunlit', 'without', 'with'] as const)(
    'add up to its yearly sum: %s',
    (quantity) => {
      const kWh = sum(host.houseHourly(quantity)!) / 1000;
      expect(kWh / summary.total[quantity].year).toBeCloseTo(1, 9);
    },
  );

  it('are at the hour what the openings let in together', () => {
    const house = host.houseHourly('with')!;
    const hour = 4621;
    const together = summary.openings.map((o) => o.glassArea * host.hourly(o.id, 'with')![hour]);
    expect(house[hour]).toBeCloseTo(sum(together), 9);
    expect(house.length).toBe(HOURS);
  });
});

describe('covered glass', () => {
  it('of an opening whose blind comes down whole is its lowered hours', () => {
    const whole = summary.openings.filter((o) =>
      o.blind?.actions.every((a) => a.kind === 'raise' || (a.share ?? 1) === 1),
    );
    expect(whole.length).toBeGreaterThan(2);
    for (const { id, blind } of whole) {
      expect(sum(host.covered(id)!) / STEPS_PER_HOUR).toBeCloseTo(blind!.hoursLowered, 6);
    }
  });

  it('of the house is that of its openings by their glass', () => {
    const area = sum(summary.openings.map((o) => o.glassArea));
    const house = host.covered('')!;
    for (const step of [18_500, 18_520, 20_000]) {
      const parts = summary.openings.map((o) => (host.covered(o.id)?.[step] ?? 0) * o.glassArea);
      // Shares are kept in single precision.
      expect(house[step]).toBeCloseTo(sum(parts) / area, 6);
    }
    expect(house.length).toBe(STEPS);
  });

  it('is absent where there is no blind', () => {
    const bare = summary.openings.find((o) => !o.blind)!;
    expect(host.covered(bare.id)).toBeUndefined();
  });
});

describe('what crosses to the page', () => {
  it('is a summary without hourly series', () => {
    // The openings' months and the rooms' episodes: a few tens of kilobytes, not megabytes.
    expect(JSON.stringify(summary).length).toBeLessThan(300_000);
  });

  it('gives the room temperatures its hot hours are counted from', () => {
    const { overheatingLimit } = studio.settings;
    for (const room of summary.rooms) {
      for (const scheme of ['without', 'with'] as const) {
        const over = host
          .roomHourly(room.id, scheme, 'operative')!
          .filter((t) => t > overheatingLimit).length;
        expect(over).toBe(room[scheme].hotHours);
      }
    }
    expect(host.roomHourly('no such room', 'with', 'operative')).toBeUndefined();
  });
});

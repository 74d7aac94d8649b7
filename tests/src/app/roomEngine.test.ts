import { beforeAll, describe, expect, it } from 'vitest';
import bellingham from '../../../data/examples/bellingham.shadewright.json' with { type: 'json' };
import { HOURS } from '../../../lib/time/index.ts';
import type { RoomDetail } from '../../../lib/study/index.ts';
import type { RoomScheme, RoomSummary, RunReply } from '../../../src/worker/api.ts';
import { EngineHost } from '../../../src/worker/host.ts';
import { blameWords, causeRows, causeTable } from '../../../src/app/charts/room/causeRows.ts';
import { Words } from '../../../src/words/index.ts';

const english = await Words.load('en', ['rooms']);
const german = await Words.load('de', ['rooms']);
const host = new EngineHost();
const LIVING = bellingham.rooms[0].id;
const BEDROOM = bellingham.rooms[1].id;
const SCHEMES: readonly RoomScheme[] = ['without', 'with'];

function roomsOf(reply: RunReply): RoomSummary[] {
  if (!reply.ok) throw new Error(JSON.stringify(reply.problems));
  return reply.summary.rooms;
}
const sum = (values: ArrayLike<number>) => Array.from(values).reduce((a, b) => a + b, 0);

let rooms: RoomSummary[];
let details: Record<RoomScheme, RoomDetail>;

beforeAll(async () => {
  rooms = roomsOf(await host.run(bellingham));
  details = {
    without: host.roomDetail(LIVING, 'without')!,
    with: host.roomDetail(LIVING, 'with')!,
  };
});

describe('the hours of a room', () => {
  it.each(SCHEMES)('count up to what the summary says: %s', (scheme) => {
    for (const room of rooms) {
      const operative = host.roomHourly(room.id, scheme, 'operative')!;
      expect(operative.length).toBe(HOURS);
      // Hours are whole: no tolerance.
      expect(operative.filter((t) => t > 25).length).toBe(room[scheme].hotHours);
      const heating = sum(host.roomHourly(room.id, scheme, 'heating')!) / 1000;
      // The same hours in the same order: only rounding differs.
      expect(heating).toBeCloseTo(room[scheme].heatingKWh, 6);
    }
  });

  it('are not there for a room that is none', () => {
    expect(host.roomHourly('no-such-room', 'with', 'air')).toBeUndefined();
    expect(host.roomDetail('no-such-room', 'with')).toBeUndefined();
  });
});

describe('what heats a room', () => {
  it.each(SCHEMES)('is split over all degree-hours: %s', (scheme) => {
    const living = rooms.find((r) => r.id === LIVING)!;
    const all = living[scheme].criteria.find((c) => c.id === 'degreeHours')!;
    const { causes } = details[scheme].causes;
    // Shares of a sum against the sum itself: rounding alone.
    expect(sum(causes.map((c) => c.degreeHours))).toBeCloseTo(all.value, 6);
  });

  it('is kept while the room stays as it is, and found anew where the limit moves', async () => {
    const other = structuredClone(bellingham);
    other.rooms.find((r) => r.id === BEDROOM)!.volume += 5;
    roomsOf(await host.run(other));
    expect(host.roomDetail(LIVING, 'without')).toBe(details.without);
    const strict = structuredClone(bellingham);
    strict.settings.overheatingLimit = 24;
    roomsOf(await host.run(strict));
    const stricter = host.roomDetail(LIVING, 'without')!;
    expect(stricter.causes.threshold).toBe(24);
    expect(stricter.causes.hours).toBeGreaterThan(details.without.causes.hours);
    roomsOf(await host.run(bellingham));
  });

  it('is drawn with the greatest cause first and nothing of weight left out', () => {
    const rows = causeRows(english, details.without, details.with, (id) => id);
    for (let i = 1; i < rows.length; i++) {
      expect(rows[i - 1].without).toBeGreaterThanOrEqual(rows[i].without);
    }
    const { causes, degreeHours } = details.without.causes;
    // Each cause that is left out has less than half a percent.
    const shown = sum(rows.map((r) => r.without));
    expect(shown).toBeGreaterThan(degreeHours * (1 - 0.005 * causes.length));
    expect(shown).toBeLessThanOrEqual(degreeHours + 1e-6);
  });

  it('names the opening to blame', () => {
    const rows = causeRows(english, details.without, details.with, (id) => `<${id}>`);
    const suns = details.without.causes.causes.filter((c) => c.kind === 'opening');
    const worst = suns.reduce((a, b) => (b.degreeHours > a.degreeHours ? b : a));
    const words = blameWords(english, rows, '25 °C');
    expect(words).toContain(`comes through <${worst.opening}> than through any other opening`);
    expect(blameWords(german, rows, '25 °C')).toMatch(
      new RegExp(
        '^Von der Wärme, die den Raum ohne Sonnenschutz über 25 °C bringt, ' +
          `kommt am meisten durch <${worst.opening}>: `,
      ),
    );
  });

  it('says so where the room is never too hot', () => {
    const cool: RoomDetail = {
      ...details.with,
      causes: { threshold: 25, hours: 0, degreeHours: 0, causes: [] },
    };
    expect(
      blameWords(
        english,
        causeRows(english, cool, cool, (id) => id),
        '25 °C',
      ),
    ).toBe(
      'Without shading the room is never over 25 °C. With shading the room is never over 25 °C.',
    );
  });

  it('is a table in the units of the page', () => {
    const rows = causeRows(english, details.without, details.with, (id) => id);
    const table = causeTable(english, rows, '°F h', (kelvinHours) => kelvinHours * 1.8);
    expect(table.rowCount).toBe(rows.length);
    expect(table.columns[1].head).toBe('Without (°F h)');
    expect(table.cell(0, 1)).toBeCloseTo(rows[0].without * 1.8, 9);
    expect(table.cell(0, 2)).toBeCloseTo(rows[0].shareWithout * 100, 9);
  });
});

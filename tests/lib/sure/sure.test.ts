import { describe, expect, it } from 'vitest';
import { createEngine } from '../../../lib/study/index.ts';
import {
  caseRunner,
  casesOf,
  decidedFor,
  howSure,
  questionOf,
  summarise,
} from '../../../lib/sure/index.ts';
import { paneHouse } from '../decide/support.ts';
import { sureInput } from './support.ts';

const WEST = { azimuth: 270, width: 3, height: 2, blind: 'external-screen-zip' };
const NORTH = { azimuth: 0, width: 1, height: 1 };

describe('how sure a verdict is', () => {
  const house = paneHouse([{ ...WEST, width: 1.6 }, NORTH]);
  const input = sureInput(house);
  const decided = decidedFor(input);
  const cases = casesOf(1);
  const question = questionOf(input, decided);
  const results = cases.map(caseRunner(question));

  it('the planned case comes to the decision itself', () => {
    results[0].facades.forEach((facade, i) => {
      const { kind, bare, external } = decided.verdicts[i];
      expect(facade.kind).toBe(kind);
      expect([facade.bare.hours, facade.external.hours]).toEqual([bare.hours, external.hours]);
      expect(facade.external.winterLost).toBeCloseTo(external.winterLost, 10);
    });
  });

  it('a case hangs on nothing that was run before it', () => {
    for (const i of [3, 27, 28]) {
      expect(JSON.stringify(caseRunner(question, createEngine())(cases[i]))).toBe(
        JSON.stringify(results[i]),
      );
    }
  });

  it('is told alike in whatever order the cases come', () => {
    const findings = JSON.stringify(summarise(question, cases, results));
    expect(JSON.stringify(summarise(question, cases, [...results].reverse()))).toBe(findings);
    expect(() => summarise(question, cases, results.slice(1))).toThrow(/plan has no result/);
  });

  it('a facade whose criterion stands at its limit is a close call, with the cases that flip', () => {
    // The limit is put on the very hours that the bare facade has in the planned year: kept by none.
    const bare = results.map((r) => r.facades[0].bare.hours);
    const settings = { ...house.settings, overheatingShare: bare[0] / 8760 };
    const atLimit = sureInput({ ...house, settings });
    const [west] = howSure(atLimit, decidedFor(atLimit)).facades;
    expect(west.kind).toBe('better');
    expect(west.closeCall).toBe(true);
    const hotter = cases.filter((_, i) => bare[i] > bare[0]).map((c) => c.id);
    expect(hotter.length).toBeGreaterThan(0);
    expect(west.flips.map((f) => f.case)).toEqual(hotter);
    expect(west.agreement).toBeCloseTo(1 - hotter.length / cases.length, 12);
    expect(west.counts.better).toBe(cases.length - hotter.length);
  });

  it('a north window that gets no sun worth a blind never flips', () => {
    const findings = summarise(question, cases, results);
    const north = findings.facades[1];
    expect([north.kind, north.closeCall, north.agreement]).toEqual(['none', false, 1]);
    expect(north.flips).toEqual([]);
    expect(findings.leftOut.length).toBeGreaterThan(3);
  });

  it('warmer and sunnier years, clearer glass and thinner blinds mean no fewer hours', () => {
    const hours = Object.fromEntries(results.map((r) => [r.id, r.house.hours]));
    expect(hours['climate-1-1']).toBeGreaterThanOrEqual(hours.plan);
    expect(hours['climate-2-1']).toBeGreaterThanOrEqual(hours['climate-1-1']);
    expect(hours['climate-2-1.05']).toBeGreaterThanOrEqual(hours['climate-2-1']);
    expect(hours['glass-1.05']).toBeGreaterThanOrEqual(hours.plan);
    expect(hours['glass-0.95']).toBeLessThanOrEqual(hours.plan);
    expect(hours['blind-1.2']).toBeGreaterThanOrEqual(hours['blind-0.8']);
    // The screen is driven by a sensor, so nobody can forget it.
    expect(hours.forgetful).toBe(hours.plan);
  });
});

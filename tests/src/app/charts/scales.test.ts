import { readFileSync } from 'node:fs';
import { lab, rgb } from 'd3';
import { describe, expect, it } from 'vitest';
import { LEVELS, pixelsOf, rampColours, rampNames } from '../../../../src/app/charts/ramp.ts';
import type { RampKind } from '../../../../src/app/charts/ramp.ts';
import { placeOf, sheetScale } from '../../../../src/app/charts/sheetScale.ts';

const css = readFileSync('src/app/charts/ramps.css', 'utf8');

/** Stops of a ramp in each block of the style sheet that sets it: light, dark twice. */
function stopsOf(kind: RampKind): string[][] {
  const columns = rampNames(kind).map((name) =>
    Array.from(css.matchAll(new RegExp(`${name}: (#[0-9a-f]{6});`, 'g')), (m) => m[1]),
  );
  return [0, 1, 2].map((block) => columns.map((column) => column[block]));
}

/**
 * Severe red and green blindness: Machado, Oliveira & Fernandes, A Physiologically-based Model for
 * Simulation of Color Vision Deficiency (IEEE TVCG 2009), severity 1.0; figures from memory.
 */
const BLINDNESS = {
  protanopia: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deuteranopia: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
};

function seenBy(matrix: number[][], colour: string): string {
  const linear = (c: number) => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4);
  const coded = (c: number) => (c <= 0.0031308 ? c * 12.92 : 1.055 * c ** (1 / 2.4) - 0.055);
  const { r, g, b } = rgb(colour);
  const light = [r, g, b].map((c) => linear(c / 255));
  const [x, y, z] = matrix.map((row) => row.reduce((sum, m, i) => sum + m * light[i], 0));
  const channel = (c: number) => 255 * coded(Math.max(0, Math.min(1, c)));
  return rgb(channel(x), channel(y), channel(z)).formatHex();
}

/** CIE 1976 colour difference. */
function difference(a: string, b: string): number {
  const [p, q] = [lab(a), lab(b)];
  return Math.hypot(p.l - q.l, p.a - q.a, p.b - q.b);
}

describe('colour ramps', () => {
  it('are set alike for both ways to the dark theme', () => {
    for (const kind of ['power', 'share', 'temperature'] as const) {
      const [light, chosen, system] = stopsOf(kind);
      expect(chosen).toEqual(system);
      expect(chosen).not.toEqual(light);
    }
  });

  it.each(['power', 'share'] as const)('run one way in lightness: %s', (kind) => {
    for (const stops of stopsOf(kind)) {
      const lightness = rampColours(stops).map((colour) => lab(colour).l);
      const way = Math.sign(lightness.at(-1)! - lightness[0]);
      for (let i = 1; i < LEVELS; i++) {
        // Colours are whole bytes: their lightness is good to half a unit.
        expect((lightness[i] - lightness[i - 1]) * way).toBeGreaterThan(-0.5);
      }
      // Grey prints must tell the ends apart with room for the steps between.
      expect(Math.abs(lightness.at(-1)! - lightness[0])).toBeGreaterThan(60);
    }
  });

  it('tell stops, and cold from hot, apart for red- and green-blind eyes', () => {
    for (const matrix of Object.values(BLINDNESS)) {
      for (const kind of ['power', 'share', 'temperature'] as const) {
        for (const stops of stopsOf(kind)) {
          const seen = stops.map((colour) => seenBy(matrix, colour));
          for (let i = 1; i < seen.length; i++) {
            // About 2.3 is a just noticeable difference (Mahy et al. 1994); four of them.
            expect(difference(seen[i - 1], seen[i])).toBeGreaterThan(9.2);
          }
          if (kind !== 'temperature') continue;
          for (let i = 0; i < 3; i++) {
            expect(difference(seen[i], seen[6 - i])).toBeGreaterThan(20);
          }
        }
      }
    }
  });

  it('become opaque pixels in the order red, green, blue, alpha', () => {
    const bytes = new Uint8Array(pixelsOf(['#102030', 'rgb(255, 0, 7)']).buffer);
    expect([...bytes]).toEqual([0x10, 0x20, 0x30, 255, 255, 0, 7, 255]);
  });
});

describe('scales of the year sheet', () => {
  it('start at nothing for power and end at or over the most', () => {
    const scale = sheetScale('power', [3, 471, 12]);
    expect(scale.low).toBe(0);
    expect(scale.high).toBe(500);
    expect(placeOf(scale, 250)).toBe(0.5);
    expect(placeOf(scale, -5)).toBe(0);
    expect(sheetScale('power', [0, 0]).high).toBeGreaterThan(0);
  });

  it('part at the middle for temperature, which both arms reach', () => {
    const scale = sheetScale('temperature', [-24, 35], 20);
    expect(placeOf(scale, 20)).toBe(0.5);
    expect(placeOf(scale, scale.low)).toBe(0);
    expect(placeOf(scale, scale.high)).toBe(1);
    const warm = sheetScale('temperature', [26, 30], 20);
    expect(warm.low).toBeLessThan(20);
    expect(warm.high).toBeGreaterThanOrEqual(30);
  });

  it('keep shares in percent', () => {
    expect(placeOf(sheetScale('share', [0]), 25)).toBe(0.25);
  });
});

import { describe, expect, it } from 'vitest';
import catalogue from '../../../data/blinds.json';
import { COS_INTERVALS } from '../../../lib/glazing/index.ts';
import {
  blindCautions,
  blindOptics,
  diffuseOptics,
  directionalGain,
  ESCAPE_CAUTION,
  HEAT_TRAP_CAUTION,
  totalGain,
  validateBlind,
  WIND_CAUTION,
} from '../../../lib/blind/index.ts';
import type { Blind, BlindSetting } from '../../../lib/blind/index.ts';
import { gatherHemisphere } from './hemisphere.ts';
import { glass } from './samples.ts';
import reference from '../../reference/shading-devices.json';

const blinds = catalogue.blinds as Blind[];
const blindOf = (id: string) => blinds.find((blind) => blind.id === id)!;

describe('data/blinds.json', () => {
  it('has valid blinds with ids of their own and a source each', () => {
    expect(blinds.length).toBeGreaterThan(15);
    expect(new Set(blinds.map((blind) => blind.id)).size).toBe(blinds.length);
    for (const blind of blinds) {
      expect(validateBlind(blind)).toEqual([]);
      expect(blind.source).toMatch(/common practice|from memory/);
    }
  });

  it('gives what wind can harm a limit within common practice, and nothing else', () => {
    for (const blind of blinds) {
      if (blind.windLimit !== undefined) {
        expect(blind.position).toBe('external');
        expect(blind.windLimit).toBeGreaterThanOrEqual(8);
        expect(blind.windLimit).toBeLessThanOrEqual(13);
      } else if (blind.position === 'external') {
        expect(blind.id).toMatch(/shutter|insect/);
      }
    }
  });

  it('goes with the cautions that fit', () => {
    expect(blindCautions(blindOf('external-slats-80-light'))).toContain(WIND_CAUTION);
    expect(blindCautions(blindOf('external-roller-shutter'))).toContain(ESCAPE_CAUTION);
    expect(blindCautions(blindOf('internal-roller-dark'))).toContain(HEAT_TRAP_CAUTION);
    expect(blindCautions(blindOf('between-slats-25-vented'))).not.toContain(HEAT_TRAP_CAUTION);
  });
});

describe('reduction factors g_tot / g with triple glazing', () => {
  const pane = glass(0.5, 0.7);

  /** Half beam from a profile angle of 45 degrees, half even light from all of the hemisphere. */
  function reduction(id: string, setting: BlindSetting): number {
    const blind = blindOf(id);
    const optics = blindOptics(blind, setting);
    const total = totalGain(blind, optics, pane);
    const beam = directionalGain(total, pane, Math.SQRT1_2, 45);
    const bare = pane.g[Math.round(Math.SQRT1_2 * COS_INTERVALS)];
    return 0.5 * (beam / bare) + 0.5 * (gatherHemisphere(total, pane) / pane.gDiffuse);
  }

  const figures = reference.reductionFactors;
  const down: BlindSetting = { kind: 'down' };

  // The table has one figure, in steps of 0.05, for a whole class of colours, glass and skies: a
  // class step either way (0.05), half a step of rounding (0.025).
  it.each([
    ['external-slats-80-light', { kind: 'tilt', angle: 45 }, figures.externalSlats45],
    ['external-slats-80-silver', { kind: 'tilt', angle: 45 }, figures.externalSlats45],
    ['external-slats-80-dark', { kind: 'tilt', angle: 45 }, figures.externalSlats45],
    ['external-slats-80-light', { kind: 'tilt', angle: 78 }, figures.externalSlatsAlmostClosed],
    ['external-slats-80-silver', { kind: 'tilt', angle: 78 }, figures.externalSlatsAlmostClosed],
    ['external-roller-shutter', down, figures.rollerShutterClosed],
    ['external-fabric-light', down, figures.awningParallel],
    ['external-awning-drop-arm', down, figures.awningParallel],
    ['internal-roller-white', down, figures.internalWhite],
    ['internal-pleated-metallised', down, figures.internalWhite],
    ['internal-roller-light', down, figures.internalLight],
    ['internal-roller-dark', down, figures.internalDarkHigh],
  ] as [string, BlindSetting, number][])('%s %o lands near %d', (id, setting, published) => {
    expect(Math.abs(reduction(id, setting) - published)).toBeLessThan(0.075);
  });

  it('orders one slat blind by its place: outside, vented, closed cavity, room', () => {
    const at = (id: string) => reduction(id, { kind: 'tilt', angle: 45 });
    expect(at('external-slats-80-light')).toBeLessThan(at('between-slats-25-vented'));
    expect(at('between-slats-25-vented')).toBeLessThan(at('between-slats-25-closed'));
    expect(at('between-slats-25-closed')).toBeLessThan(at('internal-slats-25-white'));
    expect(at('internal-slats-25-white')).toBeLessThan(1);
  });

  it('has insect screens dim the light far less than any blind', () => {
    for (const id of ['insect-screen-fine', 'insect-screen-clear-view']) {
      const { all } = diffuseOptics(blindOptics(blindOf(id), down));
      expect(all.tauDirect + all.tauDiffuse).toBeGreaterThan(0.4);
    }
  });
});

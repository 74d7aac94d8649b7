import { COS_INTERVALS } from '../../../lib/glazing/index.ts';
import type { GlassAngular } from '../../../lib/glazing/index.ts';
import type { FabricBlind, SlatBlind } from '../../../lib/blind/index.ts';

/** External slats, 80 mm every 72 mm, white, but for what is given. */
export const slats = (given: Partial<SlatBlind> = {}): SlatBlind => ({
  id: 'slats',
  name: 'Slats',
  kind: 'slats',
  position: 'external',
  slatWidth: 0.08,
  slatSpacing: 0.072,
  reflectanceUpper: 0.7,
  reflectanceLower: 0.7,
  slatTransmittance: 0,
  angleMin: 0,
  angleMax: 80,
  source: 'made up for tests',
  ...given,
});

/** A cloth with tau 0.1 (all through its holes), rho 0.6, alpha 0.3, but for what is given. */
export const fabric = (given: Partial<FabricBlind> = {}): FabricBlind => ({
  id: 'fabric',
  name: 'Fabric',
  kind: 'fabric',
  position: 'external',
  openness: 0.1,
  diffuseTransmittance: 0,
  reflectance: 0.6,
  source: 'made up for tests',
  ...given,
});

/** Glass whose g falls with incidence i as 1 - (1 - cos i)^4, a made-up but glass-like shape. */
export function glass(g: number, Ug: number, diffusing = false): GlassAngular {
  const shape = (k: number) => 1 - (1 - k / COS_INTERVALS) ** 4;
  const table = Float64Array.from({ length: COS_INTERVALS + 1 }, (_, k) => g * shape(k));
  // Integral of (1 - (1 - c)^4) 2c dc over 0 to 1 is 1 - 2 (1/5 - 1/6) = 14/15.
  const gDiffuse = (g * 14) / 15;
  return {
    g: table,
    solarTransmittance: table.map((x) => 0.85 * x),
    gDiffuse,
    solarTransmittanceDiffuse: 0.85 * gDiffuse,
    Ug,
    diffusing,
  };
}

/** Repeatable random numbers 0 to 1 (xorshift, Marsaglia 2003). */
export function randomSource(seed: number): () => number {
  let state = seed | 0 || 1;
  return () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) / 4294967296;
  };
}

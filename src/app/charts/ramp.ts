import { interpolateLab, piecewise, rgb } from 'd3';

/** Kinds of colour ramp; their stops are custom properties in ramps.css. */
export type RampKind = 'power' | 'share' | 'temperature';

const STOPS: Record<RampKind, number> = { power: 6, share: 5, temperature: 7 };

/** Colours a ramp is cut into. */
export const LEVELS = 256;

/** Names of the custom properties of a ramp, least to most. */
export function rampNames(kind: RampKind): string[] {
  return Array.from({ length: STOPS[kind] }, (_, i) => `--ramp-${kind}-${i}`);
}

/** A ramp through evenly spaced stops, in CIE L*a*b* so that steps look even; LEVELS colours. */
export function rampColours(stops: readonly string[]): string[] {
  const mix = piecewise(interpolateLab, [...stops]);
  return Array.from({ length: LEVELS }, (_, i) => mix(i / (LEVELS - 1)));
}

/** Colours as the pixels of an image, opaque; one 32-bit word each in this machine's byte order. */
export function pixelsOf(colours: readonly string[]): Uint32Array {
  const bytes = new Uint8ClampedArray(colours.length * 4);
  colours.forEach((colour, i) => {
    const { r, g, b } = rgb(colour);
    bytes.set([r, g, b, 255], i * 4);
  });
  return new Uint32Array(bytes.buffer);
}

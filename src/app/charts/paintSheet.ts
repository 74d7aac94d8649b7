import { DAYS } from '../../../lib/time/index.ts';
import { LEVELS } from './ramp.ts';
import { cellValue } from './sheetGrid.ts';
import type { SheetGrid } from './sheetGrid.ts';
import { placeOf } from './sheetScale.ts';
import type { SheetScale } from './sheetScale.ts';

/** One pixel a cell, midnight at the foot; cells without an hour stay clear. DAYS x 24 pixels. */
export function sheetPixels(
  grid: SheetGrid,
  values: ArrayLike<number>,
  scale: SheetScale,
  ramp: Uint32Array,
): Uint32Array {
  const pixels = new Uint32Array(DAYS * 24);
  for (let day = 0; day < DAYS; day++) {
    for (let clock = 0; clock < 24; clock++) {
      const value = cellValue(grid, values, day * 24 + clock);
      if (Number.isNaN(value)) continue;
      const level = Math.round(placeOf(scale, value) * (LEVELS - 1));
      pixels[(23 - clock) * DAYS + day] = ramp[level];
    }
  }
  return pixels;
}

/**
 * Fills a canvas with a sheet: enlarged without smoothing, so that every cell has hard edges; made
 * smaller with it, so that no day is dropped.
 */
export function paintSheet(canvas: HTMLCanvasElement, pixels: Uint32Array): void {
  const context = canvas.getContext('2d');
  if (!context) return;
  const cells = document.createElement('canvas');
  cells.width = DAYS;
  cells.height = 24;
  const image = new ImageData(new Uint8ClampedArray(pixels.slice().buffer), DAYS, 24);
  cells.getContext('2d')?.putImageData(image, 0, 0);
  context.clearRect(0, 0, canvas.width, canvas.height);
  context.imageSmoothingEnabled = canvas.width < DAYS;
  context.drawImage(cells, 0, 0, canvas.width, canvas.height);
}

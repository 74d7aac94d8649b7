import { describe, expect, it } from 'vitest';
import { pngPictures } from '../../src/cli/pngPictures.ts';
import { openApp } from './app.ts';

const SVG = `<svg xmlns="http://www.w3.org/2000/svg" width="120" height="40" viewBox="0 0 120 40">
  <rect width="60" height="40" fill="#ff0000"/>
  <text x="64" y="24">&lt;script&gt; ☀</text>
</svg>`;

describe('pictures as PNG', () => {
  it('are the SVG at four times its size, on white, under the same name', async () => {
    const made = await pngPictures(new Map([['charts/year.svg', SVG]]));
    expect([...made.keys()]).toEqual(['charts/year.png']);
    const bytes = Buffer.from(made.get('charts/year.png')!);
    // Signature and header chunk: PNG specification, third edition (W3C, 2025), 5.2 and 11.2.1.
    expect(bytes.subarray(0, 8).toString('latin1')).toBe('\x89PNG\r\n\x1a\n');
    expect([bytes.readUInt32BE(16), bytes.readUInt32BE(20)]).toEqual([480, 160]);
    expect(await colours(bytes)).toEqual({ left: [255, 0, 0, 255], right: [255, 255, 255, 255] });
  });
});

/** The colour inside the red half and at the far corner, as a browser decodes them. */
async function colours(png: Buffer) {
  const app = await openApp();
  try {
    return await app.page.evaluate(async (base64) => {
      const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
      const image = await createImageBitmap(new Blob([bytes], { type: 'image/png' }));
      const canvas = new OffscreenCanvas(image.width, image.height);
      const context = canvas.getContext('2d')!;
      context.drawImage(image, 0, 0);
      const at = (x: number, y: number) => [...context.getImageData(x, y, 1, 1).data];
      return { left: at(100, 80), right: at(478, 2) };
    }, png.toString('base64'));
  } finally {
    await app.close();
  }
}

import { withTab } from './tab.ts';

/** Pixels for each unit of the picture: about 300 to the inch on a page as wide as A4. */
const SCALE = 4;

/**
 * Pictures as PNG, on white.
 * @param pictures SVG by file name
 * @returns bytes by the same name with the ending .png
 */
export async function pngPictures(
  pictures: ReadonlyMap<string, string>,
): Promise<Map<string, Uint8Array>> {
  return withTab(async (tab) => {
    const made = new Map<string, Uint8Array>();
    for (const [name, svg] of pictures) {
      await tab.setContent(PAGE);
      await tab.evaluate((source) => {
        const drawn = new DOMParser().parseFromString(source, 'image/svg+xml').documentElement;
        document.body.append(document.importNode(drawn, true));
      }, svg);
      const png = await tab.locator('svg').screenshot({ animations: 'disabled' });
      made.set(name.replace(/\.svg$/, '.png'), png);
    }
    return made;
  }, SCALE);
}

const PAGE =
  '<!doctype html><style>body { margin: 0; background: white } svg { display: block }</style>';

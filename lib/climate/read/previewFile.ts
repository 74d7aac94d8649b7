import { InputError } from '../../problem/index.ts';
import { asCheck, assemble } from './assemble.ts';
import type { Assembly } from './assemble.ts';
import type { SplitGlobal } from './finish.ts';
import { previewTable } from './preview.ts';
import type { TablePreview } from './preview.ts';
import { readPvgis } from './pvgis.ts';
import { formatOf } from './read.ts';
import { cleanText } from './text.ts';
import { readTmy3 } from './tmy3.ts';
import type { TableLayout, WeatherSite } from './types.ts';

/** What a weather text gives when it is read, whatever its format. */
export interface FilePreview extends TablePreview {
  /** A text that cannot be read at all counts as a table. */
  format: 'tmy3' | 'pvgis' | 'table';
}

/**
 * Reads a weather text as far as it can be read, as `readTypicalYear` would; a failed check takes
 * the place of an InputError. Columns and rows are those of a table; named formats need none.
 * @param layout how to read the text as a table; found from the text where absent
 */
export function previewFile(
  text: string,
  layout: TableLayout | undefined,
  site: WeatherSite | undefined,
  options: { split?: SplitGlobal; fileName?: string } = {},
): FilePreview {
  const clean = layout ? undefined : plain(text);
  const format = clean === undefined ? 'table' : formatOf(clean);
  if (clean === undefined || format === 'table') {
    return { format: 'table', ...previewTable(text, layout, site, options) };
  }
  return {
    format,
    layout: undefined,
    columns: [],
    rows: [],
    ...readNamed(clean, format, site, options.split),
  };
}

function readNamed(
  clean: string,
  format: 'tmy3' | 'pvgis',
  site: WeatherSite | undefined,
  split: SplitGlobal | undefined,
): Assembly {
  try {
    return assemble(format === 'tmy3' ? readTmy3(clean) : readPvgis(clean, site), split);
  } catch (error) {
    return { checks: [asCheck('file', error)] };
  }
}

/** The text made plain; undefined where it cannot be, which the table reader then tells. */
function plain(text: string): string | undefined {
  try {
    return cleanText(text);
  } catch (error) {
    if (error instanceof InputError) return undefined;
    throw error;
  }
}

/** One shape of a picture with its SVG attributes. */
export interface Mark {
  tag: 'rect' | 'path' | 'line' | 'circle' | 'text';
  attrs: Readonly<Record<string, string | number>>;
  /** Letters of a `text`. */
  text?: string;
}

/** Data behind a picture: heads with units, rows of texts and figures. */
export interface PictureTable {
  columns: { head: string; digits?: number }[];
  rows: (string | number)[][];
}

/** A drawing as plain data: the page shows it, and it is written to a file as it is. */
export interface Picture {
  title: string;
  /** What it shows, in a sentence with its figures. */
  about: string;
  width: number;
  height: number;
  marks: Mark[];
  table: PictureTable;
}

export interface Palette {
  ink: string;
  soft: string;
  line: string;
  paper: string;
  /** Too hot, and what shading cures. */
  hot: string;
  eased: string;
  easedInk: string;
  never: string;
  sun: string;
  without: string;
  with: string;
  shade: string;
}

const colour: Palette = {
  ink: '#1b2529',
  soft: '#4c5a5f',
  line: '#a9a598',
  paper: '#ffffff',
  hot: '#84190f',
  eased: '#f7d9ae',
  easedInk: '#a65a05',
  never: '#f1f0ea',
  sun: '#f0b44a',
  without: '#a3241a',
  with: '#0c5f6b',
  shade: '#3b5490',
};

const grey: Palette = {
  ink: '#000000',
  soft: '#404040',
  line: '#999999',
  paper: '#ffffff',
  hot: '#262626',
  eased: '#dddddd',
  easedInk: '#555555',
  never: '#f4f4f4',
  sun: '#bdbdbd',
  without: '#000000',
  with: '#303030',
  shade: '#505050',
};

/** Colours of the pictures. Both tell things apart by lightness, hatching and dashes as well. */
export function paletteOf(isGrey: boolean): Palette {
  return isGrey ? grey : colour;
}

export const FONT = "Inter, 'Noto Sans', 'DejaVu Sans', 'Segoe UI', Arial, sans-serif";

export function text(
  x: number,
  y: number,
  letters: string,
  style: { size?: number; fill: string; anchor?: 'start' | 'middle' | 'end'; weight?: number },
): Mark {
  const { size = 11, fill, anchor = 'start', weight = 400 } = style;
  return {
    tag: 'text',
    attrs: {
      x: round(x),
      y: round(y),
      'font-size': size,
      fill,
      'text-anchor': anchor,
      'font-weight': weight,
    },
    text: letters,
  };
}

export function rect(
  x: number,
  y: number,
  width: number,
  height: number,
  style: Record<string, string | number>,
): Mark {
  const place = { x: round(x), y: round(y), width: round(width), height: round(height) };
  return { tag: 'rect', attrs: { ...place, ...style } };
}

export function path(d: string, style: Record<string, string | number>): Mark {
  return { tag: 'path', attrs: { d, fill: 'none', ...style } };
}

/** A line through points. */
export function polyline(points: readonly (readonly [number, number])[]): string {
  return points.map(([x, y], i) => `${i ? 'L' : 'M'}${round(x)},${round(y)}`).join('');
}

export function round(value: number): number {
  return Math.round(value * 100) / 100;
}

/**
 * Letters cut to a width by whole characters as people see them, with an ellipsis. Widths are
 * estimates on the safe side: 0.6 of the size for letters, 1.1 for wide scripts and signs.
 */
export function fitted(letters: string, width: number, size: number): string {
  const parts = [...new Intl.Segmenter().segment(letters.replace(/\s+/g, ' '))].map(
    (s) => s.segment,
  );
  const widthOf = (part: string) => (/^[\u0020-\u02ff\u0370-\u08ff]/.test(part) ? 0.6 : 1.1) * size;
  let used = 0;
  const fits = parts.findIndex((part) => (used += widthOf(part)) > width);
  if (fits < 0) return parts.join('');
  return `${parts
    .slice(0, Math.max(1, fits - 1))
    .join('')
    .trimEnd()}…`;
}

/** The picture as an SVG file of its own. */
export function svgText({ title, about, width, height, marks }: Picture): string {
  const shapes = marks.map(({ tag, attrs, text: letters }) => {
    const list = Object.entries(attrs).map(
      ([name, value]) => ` ${name}="${escaped(String(value))}"`,
    );
    return letters === undefined
      ? `<${tag}${list.join('')}/>`
      : `<${tag}${list.join('')}>${escaped(letters)}</${tag}>`;
  });
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" font-family="${escaped(FONT)}">`,
    `<title>${escaped(title)}</title>`,
    `<desc>${escaped(about)}</desc>`,
    `<rect width="${width}" height="${height}" fill="#ffffff"/>`,
    ...shapes,
    '</svg>\n',
  ].join('\n');
}

/** Characters that mean something in XML, and those it cannot hold. */
function escaped(letters: string): string {
  return letters
    .replace(/[^\P{Cc}\t\n\r]|[\ufffe\uffff]/gu, '')
    .replace(/[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g, '')
    .replace(/&/g, '&amp;')
    .replace(/</g, '&lt;')
    .replace(/>/g, '&gt;')
    .replace(/"/g, '&quot;');
}

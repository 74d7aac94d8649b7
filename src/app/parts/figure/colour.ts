/** A colour that every reader of SVG knows: opaque, with its opacity beside it. */
export interface PlainColour {
  colour: string;
  opacity: number;
}

const RGB = /^rgba?\((\d+), (\d+), (\d+)(?:, ([\d.]+))?\)$/;

/** A computed CSS colour taken apart; `paint` turns newer notations into red, green, blue, alpha. */
export function plainColour(
  computed: string,
  paint: (colour: string) => readonly number[] = painted,
): PlainColour {
  const match = RGB.exec(computed);
  if (match) {
    const [, r, g, b, alpha] = match;
    return { colour: hex([Number(r), Number(g), Number(b)]), opacity: Number(alpha ?? 1) };
  }
  if (computed === 'none' || computed.startsWith('url(')) return { colour: computed, opacity: 1 };
  const [r, g, b, a] = paint(computed);
  return { colour: hex([r, g, b]), opacity: a / 255 };
}

function hex(channels: readonly number[]): string {
  return `#${channels.map((c) => Math.round(c).toString(16).padStart(2, '0')).join('')}`;
}

/** The pixel a colour gives on a canvas. */
function painted(colour: string): readonly number[] {
  const canvas = document.createElement('canvas');
  canvas.width = canvas.height = 1;
  const context = canvas.getContext('2d');
  if (!context) return [0, 0, 0, 255];
  context.fillStyle = colour;
  context.fillRect(0, 0, 1, 1);
  return [...context.getImageData(0, 0, 1, 1).data];
}

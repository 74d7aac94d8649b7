import { plainColour } from './colour.ts';
import { plainFont } from './inlineSvg.ts';

const SVG = 'http://www.w3.org/2000/svg';

/** Characters that XML 1.0 does not allow, even escaped. */
// eslint-disable-next-line no-control-regex -- they are what is looked for
const FORBIDDEN = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g;

/** A text as XML can hold it. */
export function xmlText(text: string): string {
  return text.replace(FORBIDDEN, '');
}

/** Makes an SVG element with attributes. */
export function svgElement<K extends keyof SVGElementTagNameMap>(
  name: K,
  attributes: Record<string, string | number> = {},
): SVGElementTagNameMap[K] {
  const element = document.createElementNS(SVG, name);
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, String(value));
  return element;
}

/** The lines a text node of the page is broken into, each with the box it fills. */
function linesOf(node: Text): { text: string; box: DOMRect }[] {
  const range = document.createRange();
  const lines: { text: string; box: DOMRect }[] = [];
  for (const match of node.data.matchAll(/\S+\s*/g)) {
    range.setStart(node, match.index);
    range.setEnd(node, match.index + match[0].trimEnd().length);
    const box = range.getBoundingClientRect();
    if (box.width === 0) continue;
    const line = lines.at(-1);
    if (line && Math.abs(line.box.top - box.top) < box.height / 2) line.text += match[0];
    else lines.push({ text: match[0], box });
  }
  return lines;
}

/** A text of the page as SVG text, line by line at the same places; coordinates of the window. */
export function letteringOf(node: Text): SVGTextElement[] {
  const parent = node.parentElement;
  if (!parent) return [];
  const style = getComputedStyle(parent);
  const context = document.createElement('canvas').getContext('2d');
  return linesOf(node).map(({ text, box }) => {
    let above = box.height * 0.8;
    if (context) {
      context.font = `${style.fontStyle} ${style.fontWeight} ${style.fontSize} ${style.fontFamily}`;
      const { fontBoundingBoxAscent: up, fontBoundingBoxDescent: down } = context.measureText(text);
      above = (box.height - up - down) / 2 + up;
    }
    const element = svgElement('text', {
      x: round(box.left),
      y: round(box.top + above),
      fill: plainColour(style.color).colour,
      'font-size': style.fontSize,
      'font-weight': style.fontWeight,
      'font-family': plainFont(style.fontFamily),
    });
    element.textContent = text.trimEnd();
    return element;
  });
}

export function round(value: number): number {
  return Math.round(value * 100) / 100;
}

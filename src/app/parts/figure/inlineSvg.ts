import { plainColour } from './colour.ts';

/** Properties kept on what is drawn, with the value that needs no saying. */
const DRAWN: Record<string, string> = {
  'stroke-width': '1px',
  'stroke-dasharray': 'none',
  'stroke-linecap': 'butt',
  'stroke-linejoin': 'miter',
  'fill-rule': 'nonzero',
  'paint-order': 'normal',
  'vector-effect': 'none',
  'shape-rendering': 'auto',
};

const LETTERED: Record<string, string> = {
  'font-size': '',
  'font-weight': '400',
  'font-style': 'normal',
  'text-anchor': 'start',
  'dominant-baseline': 'auto',
  'font-variant-numeric': 'normal',
};

const LETTERS = 'text,tspan';
const SHAPES = `path,rect,line,circle,ellipse,polyline,polygon,use,${LETTERS}`;
/** What an element would hand down to its children if it stayed. */
const HANDED_DOWN = ['fill', 'stroke', 'fill-opacity', 'stroke-opacity', ...Object.keys(DRAWN)];

/**
 * A copy of an SVG on the page that needs no style sheet: every shape and letter carries its own
 * computed colours and type. Parts marked `data-unsaved` or not shown are left out.
 */
export function inlineSvg(source: SVGSVGElement): SVGSVGElement {
  const copy = source.cloneNode(true) as SVGSVGElement;
  const originals = [...source.querySelectorAll<SVGElement>('*')];
  const copies = [...copy.querySelectorAll<SVGElement>('*')];
  originals.forEach((original, i) => settle(original, copies[i]));
  for (const name of ['style', 'class', 'role', 'tabindex', 'aria-hidden'])
    copy.removeAttribute(name);
  return copy;
}

function settle(original: SVGElement, copy: SVGElement): void {
  const style = getComputedStyle(original);
  if (isUnsaved(original) || style.display === 'none' || style.visibility === 'hidden') {
    copy.remove();
    return;
  }
  for (const { name } of [...copy.attributes]) {
    if (/^(class|style|role|tabindex|on.*|aria-.*|data-.*)$/.test(name)) copy.removeAttribute(name);
  }
  if (style.opacity !== '1') copy.setAttribute('opacity', style.opacity);
  if (original.matches('stop')) {
    setColour(copy, 'stop-color', 'stop-opacity', style.stopColor, style.stopOpacity);
  } else if (original.matches(SHAPES)) {
    setColour(copy, 'fill', 'fill-opacity', style.fill, style.fillOpacity);
    setColour(copy, 'stroke', 'stroke-opacity', style.stroke, style.strokeOpacity);
    setProperties(copy, style, DRAWN);
    if (original.matches(LETTERS)) {
      setProperties(copy, style, LETTERED);
      copy.setAttribute('font-family', plainFont(style.fontFamily));
    }
  } else {
    for (const name of HANDED_DOWN) copy.removeAttribute(name);
  }
}

export function isUnsaved(element: Element): boolean {
  return element.closest('[data-unsaved], .visually-hidden') !== null;
}

/** Font names without double quotes, which would have to be escaped inside an attribute. */
export function plainFont(family: string): string {
  return family.replace(/"/g, "'");
}

function setColour(
  copy: SVGElement,
  name: string,
  opacityName: string,
  computed: string,
  computedOpacity: string,
): void {
  const { colour, opacity } = plainColour(computed);
  copy.setAttribute(name, colour);
  const together = opacity * Number(computedOpacity);
  if (together < 1) copy.setAttribute(opacityName, String(Math.round(together * 1000) / 1000));
  else copy.removeAttribute(opacityName);
}

function setProperties(
  copy: SVGElement,
  style: CSSStyleDeclaration,
  properties: Record<string, string>,
): void {
  for (const [name, usual] of Object.entries(properties)) {
    const value = style.getPropertyValue(name);
    if (value && value !== usual) copy.setAttribute(name, value);
    else copy.removeAttribute(name);
  }
}

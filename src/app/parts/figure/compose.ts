import { plainColour } from './colour.ts';
import { inlineSvg, isUnsaved } from './inlineSvg.ts';
import { letteringOf, round, svgElement, xmlText } from './lettering.ts';

const MARGIN = 16;
const GAP = 10;

/** A figure as one SVG document that stands alone. */
export interface SavedFigure {
  text: string;
  width: number;
  height: number;
}

interface Piece {
  element: SVGElement;
  box: { left: number; right: number; top: number; bottom: number };
}

/**
 * Draws what a figure shows into one SVG: its charts, canvases as images, and the words around
 * them. The regions marked `data-saved` are stacked; inside one, everything keeps its place.
 */
export function composeFigure(figure: HTMLElement, title: string, about: string): SavedFigure {
  const regions = [...figure.querySelectorAll<HTMLElement>('[data-saved]')].map(piecesOf);
  const shown = regions.filter((pieces) => pieces.length > 0);
  const left = Math.min(...shown.flat().map(({ box }) => box.left));
  const right = Math.max(...shown.flat().map(({ box }) => box.right));
  const width = Math.ceil(right - left + 2 * MARGIN);

  const groups: SVGGElement[] = [];
  let y = MARGIN;
  for (const pieces of shown) {
    const top = Math.min(...pieces.map(({ box }) => box.top));
    const bottom = Math.max(...pieces.map(({ box }) => box.bottom));
    const group = svgElement('g', {
      transform: `translate(${round(MARGIN - left)},${round(y - top)})`,
    });
    group.append(...pieces.map(({ element }) => element));
    groups.push(group);
    y += bottom - top + GAP;
  }
  const height = Math.ceil(y - GAP + MARGIN);

  const root = svgElement('svg', { width, height, viewBox: `0 0 ${width} ${height}` });
  const name = svgElement('title');
  name.textContent = title;
  const description = svgElement('desc');
  description.textContent = about;
  const fill = plainColour(getComputedStyle(figure).backgroundColor).colour;
  root.append(name, description, svgElement('rect', { width, height, fill }), ...groups);
  cleanNodes(root);
  return { text: new XMLSerializer().serializeToString(root), width, height };
}

/** Takes out comments, and characters that XML cannot hold. */
function cleanNodes(root: Element): void {
  const walker = document.createTreeWalker(root, NodeFilter.SHOW_TEXT | NodeFilter.SHOW_COMMENT);
  const comments: Comment[] = [];
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    if (node instanceof Comment) comments.push(node);
    else node.nodeValue = xmlText(node.nodeValue ?? '');
  }
  for (const comment of comments) comment.remove();
}

function piecesOf(region: HTMLElement): Piece[] {
  const pieces: Piece[] = [];
  const collect = (element: Element) => {
    if (isUnsaved(element) || element.getClientRects().length === 0) return;
    if (element instanceof SVGSVGElement) pieces.push(drawingOf(element));
    else if (element instanceof HTMLCanvasElement) pieces.push(imageOf(element));
    else {
      for (const child of element.childNodes) {
        if (child instanceof Text) pieces.push(...letteringOf(child).map(boxed(element)));
        else if (child instanceof Element) collect(child);
      }
    }
  };
  collect(region);
  return pieces;
}

function drawingOf(svg: SVGSVGElement): Piece {
  const box = svg.getBoundingClientRect();
  const element = inlineSvg(svg);
  for (const [name, value] of Object.entries(placed(box))) element.setAttribute(name, value);
  element.setAttribute('overflow', 'visible');
  return { element, box };
}

function imageOf(canvas: HTMLCanvasElement): Piece {
  const box = canvas.getBoundingClientRect();
  const href = canvas.toDataURL('image/png');
  const element = svgElement('image', { ...placed(box), href, preserveAspectRatio: 'none' });
  const rendering = getComputedStyle(canvas).imageRendering;
  if (rendering !== 'auto') element.setAttribute('style', `image-rendering: ${rendering}`);
  return { element, box };
}

function placed(box: DOMRect): Record<string, string> {
  const { left: x, top: y, width, height } = box;
  return Object.fromEntries(
    Object.entries({ x, y, width, height }).map(([name, value]) => [name, String(round(value))]),
  );
}

/** Lettering with the box of the line it came from, as wide as the element around it at most. */
function boxed(around: Element): (element: SVGTextElement) => Piece {
  const { left, right } = around.getBoundingClientRect();
  return (element) => {
    const size = parseFloat(element.getAttribute('font-size') ?? '14');
    const y = Number(element.getAttribute('y'));
    return { element, box: { left, right, top: y - size, bottom: y + size * 0.3 } };
  };
}

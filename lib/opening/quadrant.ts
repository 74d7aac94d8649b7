import type { RevealFace } from './revealFace.ts';
import { seenLight } from './revealFace.ts';
import { cutToStrip, patchArea, Plates, setRectangle } from './shadow.ts';
import type { Plate } from './shadow.ts';
import type { OpeningGeometry } from './types.ts';

/** The four reveal faces as the glass sees them. */
export interface RevealFaces {
  head: RevealFace;
  sill: RevealFace;
  left: RevealFace;
  right: RevealFace;
}

/** The opening seen in a mirror: left and right, or head and sill, change places. */
export function mirror(g: OpeningGeometry, flipX: boolean, flipY: boolean): OpeningGeometry {
  const turnFin = (fin: OpeningGeometry['finLeft']) =>
    fin && flipY ? { ...fin, above: fin.below, below: fin.above } : fin;
  const { overhang } = g;
  return {
    ...g,
    frame: mirrorSides(g.frame, flipX, flipY),
    reveal: mirrorSides(g.reveal, flipX, flipY),
    // Upside down it would lie below the sill, where no sun from above the head meets it.
    overhang:
      !overhang || flipY
        ? undefined
        : flipX
          ? { ...overhang, left: overhang.right, right: overhang.left }
          : overhang,
    finLeft: turnFin(flipX ? g.finRight : g.finLeft),
    finRight: turnFin(flipX ? g.finLeft : g.finRight),
  };
}

/** Four values, one a side, in the mirror. */
export function mirrorSides<T>(
  sides: { head: T; sill: T; left: T; right: T },
  flipX: boolean,
  flipY: boolean,
): { head: T; sill: T; left: T; right: T } {
  return {
    head: flipY ? sides.sill : sides.head,
    sill: flipY ? sides.head : sides.sill,
    left: flipX ? sides.right : sides.left,
    right: flipX ? sides.left : sides.right,
  };
}

/**
 * An opening under a sun from above and from the right (slopes a, b >= 0): the head, the right jamb,
 * the overhang and the right fin shade, the sill and the left jamb are lit. The other three quarters
 * of the sky are this one in a mirror.
 */
export class Quadrant {
  private readonly width: number;
  private readonly height: number;
  private readonly x0: number;
  private readonly x1: number;
  private readonly head: number;
  private readonly jamb: number;
  /** As deep as the shallower of head and right jamb the reveal is a plain box. */
  private readonly box: number;
  private readonly shades: Plates;
  private readonly outer: Plates;
  private readonly sill: RevealFace;
  private readonly left: RevealFace;

  constructor(g: OpeningGeometry, faces: RevealFaces) {
    this.width = g.width;
    this.height = g.height;
    this.x0 = g.frame.left;
    this.x1 = g.width - g.frame.right;
    this.head = g.reveal.head;
    this.jamb = g.reveal.right;
    this.box = Math.min(this.head, this.jamb);
    const outer = outerPlates(g);
    this.outer = new Plates(outer);
    this.shades = new Plates([...deeperFace(g), ...outer]);
    this.sill = faces.sill;
    this.left = faces.left;
  }

  /** Sunlit area of the glass between two heights, m2. */
  litGlass(y0: number, y1: number, a: number, b: number): number {
    // What a box leaves of the glass is its outer edge moved along the ray.
    const right = Math.min(this.x1, this.width - a * this.box);
    const top = Math.min(y1, this.height - b * this.box);
    if (!(right > this.x0 && top > y0)) return 0;
    const area = (right - this.x0) * (top - y0);
    if (this.shades.count === 0) return area;
    setRectangle(this.x0, right, y0, top);
    return area - this.shades.shadedArea(a, b);
  }

  /** Light on the left jamb that would reach the glass by one reflection of 1, m2 over |sx|. */
  fromJamb(a: number, b: number): number {
    const { width, height, head, jamb, left } = this;
    const light = seenLight(left, jamb, head, width, height, a, b);
    if (light <= 0 || this.outer.count === 0) return light;
    // The face moved along the ray into the plane of the glass, less what head and jamb keep out.
    const end = Math.min(0, width - a * jamb);
    setRectangle(-a * left.depth, end, -b * left.depth, height - b * head);
    cutToStrip(-a * height, 0);
    return light * this.openShare(a, b);
  }

  /** Light on the sill that would reach the glass by one reflection of 1, m2 over |sy|. */
  fromSill(a: number, b: number): number {
    const { width, height, head, jamb, sill } = this;
    const light = seenLight(sill, head, jamb, height, width, b, a);
    if (light <= 0 || this.outer.count === 0) return light;
    const end = Math.min(0, height - b * head);
    setRectangle(-a * sill.depth, width - a * jamb, -b * sill.depth, end);
    cutToStrip(0, b * width);
    return light * this.openShare(a, b);
  }

  /** Share of the patch in hand that overhang and fin leave; 1 where it is empty. */
  private openShare(a: number, b: number): number {
    const shaded = this.outer.shadedArea(a, b);
    return shaded > 0 ? 1 - shaded / patchArea(a, b) : 1;
  }
}

/** The part of the deeper of head and right jamb that stands beyond the other. */
function deeperFace(g: OpeningGeometry): Plate[] {
  const { head, right } = g.reveal;
  if (head === right) return [];
  const upright = right > head;
  return [
    {
      upright,
      at: upright ? g.width : g.height,
      from: 0,
      to: upright ? g.height : g.width,
      z0: Math.min(head, right),
      z1: Math.max(head, right),
    },
  ];
}

function outerPlates(g: OpeningGeometry): Plate[] {
  const { overhang, finRight: fin, setBack } = g;
  const plates: Plate[] = [];
  if (overhang && overhang.projection > 0) {
    plates.push({
      upright: false,
      at: g.height + overhang.aboveHead,
      from: -overhang.left,
      to: g.width + overhang.right,
      z0: setBack,
      z1: setBack + overhang.projection,
    });
  }
  if (fin && fin.projection > 0) {
    plates.push({
      upright: true,
      at: g.width + fin.offset,
      from: -fin.below,
      to: g.height + fin.above,
      z0: setBack,
      z1: setBack + fin.projection,
    });
  }
  return plates;
}

import { blockBetween, isSame, withBlock } from './cells.ts';
import type { CellBlock, Cells } from './cells.ts';

/** What a press on the grid does; `look` leaves it to scrolling. */
export type Tool = 'paint' | 'erase' | 'look';

/**
 * One movement of the hand over the grid: from the cell it began at to the cell it is at, all
 * between them is painted or erased. What was there before comes back as the hand goes back.
 */
export class Stroke {
  /** Tells one stroke from the next. */
  readonly id: number;
  private readonly before: Cells;
  private readonly from: number;
  private readonly painted: boolean;
  private readonly quartersPerRow: number;

  constructor(before: Cells, from: number, painted: boolean, quartersPerRow: number) {
    this.id = nextStroke();
    this.before = before;
    this.from = from;
    this.painted = painted;
    this.quartersPerRow = quartersPerRow;
  }

  block(to: number): CellBlock {
    return blockBetween(this.from, to, this.quartersPerRow);
  }

  /** The cells with the hand at `to`; undefined where they are as they stand. */
  cells(to: number, now: Cells): Cells | undefined {
    const next = withBlock(this.before, this.block(to), this.painted);
    return isSame(next, now) ? undefined : next;
  }
}

let strokes = 0;

/** A number that no other change of the painted hours has. */
export function nextStroke(): number {
  return ++strokes;
}

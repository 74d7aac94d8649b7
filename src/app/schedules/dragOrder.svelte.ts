/** The upper and lower edge of an item of a list. */
interface Edges {
  top: number;
  bottom: number;
}

/** Dragging items of a list to another place by a handle, with the pointer. */
export class DragOrder {
  /** The item that is dragged. */
  dragged = $state<string>();

  readonly #edges: () => readonly Edges[];
  readonly #move: (id: string, to: number, drag: number) => void;
  #drags = 0;

  /**
   * @param edges of the items as they stand on the page, in order
   * @param move called as soon as the item belongs to another place; with a number a drag
   */
  constructor(edges: () => readonly Edges[], move: (id: string, to: number, drag: number) => void) {
    this.#edges = edges;
    this.#move = move;
  }

  start(id: string, event: PointerEvent & { currentTarget: Element }): void {
    if (event.button !== 0) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    this.dragged = id;
    this.#drags++;
  }

  /** @param index where the dragged item stands now */
  follow(index: number, event: PointerEvent): void {
    if (this.dragged === undefined) return;
    const to = placeAt(this.#edges(), index, event.clientY);
    if (to !== index) this.#move(this.dragged, to, this.#drags);
  }

  end(): void {
    this.dragged = undefined;
  }
}

/**
 * The place in a list that an item held at a height belongs to: past each neighbour whose middle it
 * has crossed.
 */
export function placeAt(edges: readonly Edges[], from: number, y: number): number {
  const middle = (i: number) => (edges[i].top + edges[i].bottom) / 2;
  let to = from;
  while (to + 1 < edges.length && y > middle(to + 1)) to++;
  while (to > 0 && y < middle(to - 1)) to--;
  return to;
}

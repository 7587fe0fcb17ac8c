import type { Box, Point } from "./plane.ts";

const step = 12;

/** Things on a page by the squares they touch, so that what lies at a point or in a box is found without looking at all. */
export class PageGrid<T> {
  readonly #columns: number;
  readonly #rows: number;
  readonly #left: number;
  readonly #bottom: number;
  readonly #cells: T[][];

  constructor([left, bottom, right, top]: Box) {
    this.#left = left;
    this.#bottom = bottom;
    this.#columns = Math.max(1, Math.ceil((right - left) / step));
    this.#rows = Math.max(1, Math.ceil((top - bottom) / step));
    this.#cells = Array.from({ length: this.#columns * this.#rows }, () => []);
  }

  #column(x: number): number {
    return Math.min(this.#columns - 1, Math.max(0, Math.floor((x - this.#left) / step)));
  }
  #row(y: number): number {
    return Math.min(this.#rows - 1, Math.max(0, Math.floor((y - this.#bottom) / step)));
  }

  /** The squares that a box touches; none where it is empty. */
  *within([left, bottom, right, top]: Box): Generator<T[]> {
    if (left > right || bottom > top) return;
    const [from, to] = [this.#column(left), this.#column(right)];
    for (let row = this.#row(bottom); row <= this.#row(top); row++)
      for (let column = from; column <= to; column++)
        yield this.#cells[row * this.#columns + column] ?? [];
  }

  /** The square that a point lies in, in the order of adding. */
  at([x, y]: Point): T[] {
    return this.#cells[this.#row(y) * this.#columns + this.#column(x)] ?? [];
  }
}

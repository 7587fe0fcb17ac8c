import type { Box, Point } from "./plane.ts";

const step = 12;
const nothing: readonly never[] = [];

/** Things on a page by the squares they touch, so that what lies at a point or in a box is found without looking at all. */
export class PageGrid<T> {
  readonly #columns: number;
  readonly #rows: number;
  readonly #left: number;
  readonly #bottom: number;
  readonly #cells: (T[] | undefined)[];

  constructor([left, bottom, right, top]: Box) {
    this.#left = left;
    this.#bottom = bottom;
    this.#columns = Math.max(1, Math.ceil((right - left) / step));
    this.#rows = Math.max(1, Math.ceil((top - bottom) / step));
    this.#cells = new Array(this.#columns * this.#rows);
  }

  #column(x: number): number {
    return Math.min(this.#columns - 1, Math.max(0, Math.floor((x - this.#left) / step)));
  }
  #row(y: number): number {
    return Math.min(this.#rows - 1, Math.max(0, Math.floor((y - this.#bottom) / step)));
  }

  /** Adds a thing to every square that a box touches; to none where the box is empty. */
  addTo([left, bottom, right, top]: Box, thing: T): void {
    if (left > right || bottom > top) return;
    const [from, to, last] = [this.#column(left), this.#column(right), this.#row(top)];
    for (let row = this.#row(bottom); row <= last; row++)
      for (let at = row * this.#columns + from; at <= row * this.#columns + to; at++)
        this.#add(at, thing);
  }

  /** Adds a thing to the square that a point lies in. */
  addAt([x, y]: Point, thing: T): void {
    this.#add(this.#row(y) * this.#columns + this.#column(x), thing);
  }

  /** Visits the things in the squares that a box touches, those of several squares several times. */
  eachIn([left, bottom, right, top]: Box, visit: (thing: T) => void): void {
    if (left > right || bottom > top) return;
    const [from, to, last] = [this.#column(left), this.#column(right), this.#row(top)];
    for (let row = this.#row(bottom); row <= last; row++)
      for (let at = row * this.#columns + from; at <= row * this.#columns + to; at++)
        this.#cells[at]?.forEach(visit);
  }

  /** The things in the square that a point lies in, in the order of adding. */
  at([x, y]: Point): readonly T[] {
    return this.#cells[this.#row(y) * this.#columns + this.#column(x)] ?? nothing;
  }

  #add(at: number, thing: T): void {
    const cell = this.#cells[at];
    if (cell) cell.push(thing);
    else this.#cells[at] = [thing];
  }
}

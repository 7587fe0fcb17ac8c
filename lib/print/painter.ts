import type { Operand } from "./content-stream.ts";
import type { Paint, PaintedPage } from "./painted-page.ts";
import type { Glyphs } from "./pdf-reader.ts";
import { boxOfRings, chained, type Matrix, moved, type Point, shared, unmoved } from "./plane.ts";

/** A pattern or a picture counts as middle grey. */
export const patterned = 0.5;
const corners: readonly Point[] = [
  [0, 0],
  [1, 0],
  [1, 1],
  [0, 1],
];

/** Does on a page what the operators of one content stream ask: keeps the state, the path and the place of the text. */
export class Painter {
  readonly #page: PaintedPage;
  readonly #saved: Paint[] = [];
  #state: Paint;
  #text: Matrix = unmoved;
  #line: Matrix = unmoved;
  #rings: number[][] = [];
  #ring: number[] = [];
  #clipping = false;

  constructor(page: PaintedPage, state: Paint) {
    this.#page = page;
    this.#state = state;
  }

  get state(): Paint {
    return this.#state;
  }
  save(): void {
    this.#saved.push(this.#state);
  }
  restore(): void {
    this.#state = this.#saved.pop() ?? this.#state;
  }
  set(change: Partial<Paint>): void {
    this.#state = { ...this.#state, ...change };
  }
  transform(by: Matrix): void {
    this.set({ ctm: chained(this.#state.ctm, by) });
  }

  begin(): void {
    this.#ring = [];
    this.#rings.push(this.#ring);
  }
  /** Goes on along points, each as x and y in turn. */
  go(points: readonly number[]): void {
    const [a, b, c, d, e, f] = this.#state.ctm;
    for (let at = 0; at + 1 < points.length; at += 2) {
      const [x = 0, y = 0] = [points[at], points[at + 1]];
      this.#ring.push(a * x + c * y + e, b * x + d * y + f);
    }
  }
  rectangle([x = 0, y = 0, width = 0, height = 0]: readonly number[]): void {
    this.begin();
    for (const [right, up] of corners) this.go([x + right * width, y + up * height]);
  }
  /** The path clips what comes after it. */
  clip(): void {
    this.#clipping = true;
  }
  endPath(filled: boolean): void {
    const rings = this.#rings;
    if (filled) this.#page.cover(rings, this.#state, this.#state.grey);
    if (this.#clipping) this.set({ clip: shared(this.#state.clip, boxOfRings(rings)) });
    this.#rings = [];
    this.#clipping = false;
  }
  /** Covers a rectangle from its origin on with a pattern or a picture. */
  picture(map: Matrix): void {
    this.#page.cover([corners.flatMap((corner) => moved(map, corner))], this.#state, patterned);
  }

  placeText(at: Matrix): void {
    this.#line = at;
    this.#text = at;
  }
  moveText([x = 0, y = 0]: readonly number[]): void {
    this.placeText(chained(this.#line, [1, 0, 0, 1, x, y]));
  }
  /** Says strings of glyphs, moved back by the numbers between them in thousandths of the size. */
  say(operands: readonly Operand[], { digits, text: says, widthOf }: Glyphs): void {
    const { ctm, size } = this.#state;
    const placed = chained(ctm, this.#text);
    let pen = 0;
    for (const operand of operands) {
      if (typeof operand === "number") pen -= (operand / 1000) * size;
      if (typeof operand === "number" || operand[0] !== "<") continue;
      for (let at = 1; at + digits < operand.length; at += digits) {
        const code = Number.parseInt(operand.slice(at, at + digits), 16);
        const advance = (widthOf(code) / 1000) * size;
        this.#page.letter(says.get(code) ?? "\ufffd", pen + advance / 2, placed, this.#state);
        pen += advance;
      }
    }
    this.#text = chained(this.#text, [1, 0, 0, 1, pen, 0]);
  }
}

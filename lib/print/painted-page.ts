import { PageGrid } from "./page-grid.ts";
import {
  type Box,
  boxOfRings,
  inBox,
  inRings,
  type Matrix,
  moved,
  type Point,
  type Rings,
  shared,
} from "./plane.ts";

/** A letter as a page paints it: what it says, its size in points, how much it stands out, and what hides it. */
export type Letter = {
  readonly says: string;
  readonly size: number;
  readonly at: Point;
  /** 0 where it cannot be told from what lies beneath it, 1 for black on white. */
  readonly ink: number;
  hidden?: "outside the page" | "clipped" | "covered";
};

/** How a page paints at a moment; `grey` is that of areas and letters. */
export type Paint = {
  readonly ctm: Matrix;
  readonly clip: Box;
  readonly grey: number;
  readonly alpha: number;
  /** Alpha of all groups around. */
  readonly group: number;
  readonly masked: boolean;
  readonly size: number;
  readonly font: number;
};

/** What lets less than this through is a cover. */
const coverAlpha = 0.4;

type Area = { readonly box: Box; readonly rings: Rings; readonly grey: number };

/** The letters and areas on a page, in the order of painting; in points. */
export class PaintedPage {
  readonly letters: Letter[] = [];
  readonly paper: Box;
  readonly #seen: PageGrid<Letter>;
  readonly #areas: PageGrid<Area>;

  constructor(paper: Box) {
    this.paper = paper;
    this.#seen = new PageGrid(paper);
    this.#areas = new PageGrid(paper);
  }

  /** Paints an area over what is there. */
  cover(rings: Rings, { clip, alpha, group, masked }: Paint, grey: number): void {
    if (rings.length === 0 || alpha * group < coverAlpha || masked) return;
    const box = shared(boxOfRings(rings), clip);
    this.#areas.addTo(box, { box, rings, grey });
    this.#seen.eachIn(box, (letter) => {
      if (!letter.hidden && inBox(letter.at, box) && inRings(letter.at, rings))
        letter.hidden = "covered";
    });
  }

  /** Paints a letter whose middle is `middle` along the line that `placed` puts on the page. */
  letter(says: string, middle: number, placed: Matrix, paint: Paint): void {
    const at = moved(placed, [middle, paint.size / 3]);
    const ground = this.#beneath(at);
    const alpha = paint.masked ? 0 : paint.alpha * paint.group;
    const grey = paint.grey * alpha + ground * (1 - alpha);
    const clipped = inBox(at, paint.clip) ? undefined : ("clipped" as const);
    const hidden = inBox(at, this.paper) ? clipped : ("outside the page" as const);
    const painted: Letter = {
      says,
      size: paint.size * Math.hypot(placed[2], placed[3]),
      at,
      ink: Math.abs(ground - grey) / Math.max(ground, grey, 0.01),
    };
    if (hidden) painted.hidden = hidden;
    else this.#seen.addAt(at, painted);
    this.letters.push(painted);
  }

  #beneath(at: Point): number {
    const under = this.#areas.at(at);
    return under.findLast(({ box, rings }) => inBox(at, box) && inRings(at, rings))?.grey ?? 1;
  }
}

import type { LabelCandidate } from "./label-candidate.ts";
import { labelClear } from "./label-candidate.ts";
import { lineMeetsBox, linesMeet } from "./stretch.ts";

const sides = ["beside", "above", "below", "left", "right"] as const;

/** The possible places of all labels, numbered in one row label by label. They are kept as rows of numbers: thousands of small
 * objects would cost more to keep than to compare. Millimetres. */
export class LabelPlaces {
  /** Where each label's places begin, and where the last label's end. */
  readonly starts: number[] = [0];
  readonly costs: number[] = [];
  readonly #sides: number[] = [];
  readonly #lines: number[] = [];
  /** Four numbers a place: its box, all that it takes with its leader and its clearance, and its leader, NaN without one. */
  readonly #boxes: number[] = [];
  readonly #extents: number[] = [];
  readonly #leaders: number[] = [];

  /** Adds a place to those of the label at hand. */
  add({ box, extent, leader, side, line, cost }: LabelCandidate): void {
    this.costs.push(cost);
    this.#sides.push(sides.indexOf(side));
    this.#lines.push(line);
    this.#boxes.push(box.x0, box.y0, box.x1, box.y1);
    this.#extents.push(extent.x0, extent.y0, extent.x1, extent.y1);
    if (leader === undefined) this.#leaders.push(NaN, NaN, NaN, NaN);
    else this.#leaders.push(leader[0][0], leader[0][1], leader[1][0], leader[1][1]);
  }

  /** Ends the places of the label at hand; tells whether it has any. */
  end(): boolean {
    const { length } = this.costs;
    const had = length > (this.starts.at(-1) ?? 0);
    this.starts.push(length);
    return had;
  }

  /** The label of each place. */
  owners(): Int32Array {
    const owners = new Int32Array(this.costs.length);
    for (let label = 0; label + 1 < this.starts.length; label++)
      owners.fill(label, this.starts[label], this.starts[label + 1]);
    return owners;
  }

  /** The extents of all places, four numbers each: two places whose extents do not overlap cannot clash. */
  get extents(): readonly number[] {
    return this.#extents;
  }

  /** What one place looks like beside another: 2 on another side of the plate, 1 in another line, 0 alike. */
  unlike(place: number, other: number): 0 | 1 | 2 {
    if (this.#sides[place] !== this.#sides[other]) return 2;
    return this.#lines[place] === this.#lines[other] ? 0 : 1;
  }

  /** A place in full, but for its extent. */
  at(place: number): Omit<LabelCandidate, "extent"> {
    const four = (rows: readonly number[]): readonly [number, number, number, number] => [
      rows[4 * place] ?? NaN,
      rows[4 * place + 1] ?? NaN,
      rows[4 * place + 2] ?? NaN,
      rows[4 * place + 3] ?? NaN,
    ];
    const [x0, y0, x1, y1] = four(this.#boxes);
    const [ax, ay, bx, by] = four(this.#leaders);
    const place0 = {
      box: { x0, y0, x1, y1 },
      side: sides[this.#sides[place] ?? 0] ?? "beside",
      line: this.#lines[place] ?? 0,
      cost: this.costs[place] ?? 0,
    };
    return Number.isNaN(ax)
      ? place0
      : {
          ...place0,
          leader: [
            [ax, ay],
            [bx, by],
          ],
        };
  }

  /** Whether two labels' places cannot both be used: their boxes or leaders meet, or one's leader meets the other's box. */
  clash(one: number, other: number): boolean {
    const [a, b, boxes] = [4 * one, 4 * other, this.#boxes];
    const apart =
      (boxes[a] ?? 0) - labelClear >= (boxes[b + 2] ?? 0) ||
      (boxes[b] ?? 0) >= (boxes[a + 2] ?? 0) + labelClear ||
      (boxes[a + 1] ?? 0) - labelClear >= (boxes[b + 3] ?? 0) ||
      (boxes[b + 1] ?? 0) >= (boxes[a + 3] ?? 0) + labelClear;
    if (!apart) return true;
    const hasOne = this.#hasLeader(a);
    const hasOther = this.#hasLeader(b);
    return (
      (hasOne && this.#leaderMeets(a, b)) ||
      (hasOther && this.#leaderMeets(b, a)) ||
      (hasOne && hasOther && this.#leadersMeet(a, b))
    );
  }

  #hasLeader(at: number): boolean {
    return !Number.isNaN(this.#leaders[at]);
  }

  /** Whether the leader at `a` comes too near to the box at `b`. */
  #leaderMeets(a: number, b: number): boolean {
    const [lines, boxes] = [this.#leaders, this.#boxes];
    return lineMeetsBox(
      lines[a] ?? 0,
      lines[a + 1] ?? 0,
      lines[a + 2] ?? 0,
      lines[a + 3] ?? 0,
      (boxes[b] ?? 0) - labelClear,
      (boxes[b + 1] ?? 0) - labelClear,
      (boxes[b + 2] ?? 0) + labelClear,
      (boxes[b + 3] ?? 0) + labelClear,
    );
  }

  #leadersMeet(a: number, b: number): boolean {
    const lines = this.#leaders;
    return linesMeet(
      lines[a] ?? 0,
      lines[a + 1] ?? 0,
      lines[a + 2] ?? 0,
      lines[a + 3] ?? 0,
      lines[b] ?? 0,
      lines[b + 1] ?? 0,
      lines[b + 2] ?? 0,
      lines[b + 3] ?? 0,
    );
  }
}

import type { Pen, Spot } from "../canvas.ts";
import { gaps } from "../tokens.ts";

/** The stretch of a segment that is drawn, mm from its left end; a cut end has no edge of its own. */
export type Shown = {
  readonly from: number;
  readonly to: number;
  readonly cutLeft: boolean;
  readonly cutRight: boolean;
};

/** A piece of an instrument along its axis (y = 0), tip to the left. Millimetres, true size. */
export type Segment = {
  readonly length: number;
  /** Half of its greatest height. */
  readonly half: number;
  /** Half of its height at one place, where it tapers. */
  halfAt?(x: number): number;
  draw(pen: Pen, shown: Shown): void;
};

/** A view from the end, drawn beside the tip: the section of a driver. */
export type EndView = {
  readonly width: number;
  readonly half: number;
  draw(pen: Pen, centre: Spot): void;
};

/** An instrument's silhouette, true size in mm, from its tip to the right. */
export type Shape = {
  readonly segments: readonly Segment[];
  readonly endViews?: readonly EndView[];
  /** A second stretch worth seeing when the body is broken off: rings, a coupling. */
  readonly focus?: { readonly from: number; readonly to: number };
  /** A third arm that hangs down from `at` on the axis; only whole views show it. */
  readonly arm?: { readonly at: number; readonly segments: readonly Segment[] };
  /** What its ends are called: the left one, the right one, the arm's. */
  readonly endNames?: readonly string[];
};

/** A stretch of a shape set at a place along the figure. */
export type Stretch = { readonly from: number; readonly to: number; readonly at: number };

/** Overall length of a shape, mm. */
export const shapeLength = (shape: Shape): number =>
  shape.segments.reduce((sum, segment) => sum + segment.length, 0);

/** Half of a shape's greatest height, mm, end views included; of the given stretches only, when there are any. */
export function shapeHalf(
  shape: Shape,
  stretches: readonly Stretch[] = [{ from: 0, to: Infinity, at: 0 }],
): number {
  let highest = Math.max(0, ...(shape.endViews ?? []).map((view) => view.half));
  let start = 0;
  for (const segment of shape.segments) {
    for (const { from, to } of stretches) {
      const [a, b] = [Math.max(from, start) - start, Math.min(to, start + segment.length) - start];
      if (a >= b) continue;
      highest = Math.max(
        highest,
        segment.halfAt === undefined
          ? segment.half
          : Math.max(segment.halfAt(a), segment.halfAt(b)),
      );
    }
    start += segment.length;
  }
  return highest;
}

/** Room that end views take before the tip, mm. */
export const endViewsWidth = (shape: Shape): number =>
  (shape.endViews ?? []).reduce((sum, view) => sum + view.width + endViewGap, 0);

const endViewGap = gaps.endView;

/** Draws end views from x = 0, then the given stretches of a shape; the whole shape when no stretch is given. */
export function drawShape(pen: Pen, shape: Shape, stretches?: readonly Stretch[]): void {
  let x = 0;
  for (const view of shape.endViews ?? []) {
    view.draw(pen, [x + view.width / 2, 0]);
    x += view.width + endViewGap;
  }
  const total = shapeLength(shape);
  for (const stretch of stretches ?? [{ from: 0, to: total, at: 0 }]) {
    drawStretch(pen, shape, stretch, x);
    if (stretch.from > 0.001) drawBreak(pen, x + stretch.at, halfAt(shape, stretch.from));
    if (stretch.to < total - 0.001)
      drawBreak(pen, x + stretch.at + stretch.to - stretch.from, halfAt(shape, stretch.to));
  }
}

function drawStretch(pen: Pen, shape: Shape, { from, to, at }: Stretch, x: number): void {
  let start = 0;
  for (const segment of shape.segments) {
    const end = start + segment.length;
    const a = Math.max(from, start);
    const b = Math.min(to, end);
    if (b - a > 0.01) {
      const shown = {
        from: a - start,
        to: b - start,
        cutLeft: a > start + 0.001,
        cutRight: b < end - 0.001,
      };
      pen.group("segment", { at: [x + at + start - from, 0] }, (inner) =>
        segment.draw(inner, shown),
      );
    }
    start = end;
  }
}

function halfAt(shape: Shape, place: number): number {
  let start = 0;
  for (const segment of shape.segments) {
    if (place <= start + segment.length) return segment.halfAt?.(place - start) ?? segment.half;
    start += segment.length;
  }
  return 0;
}

function drawBreak(pen: Pen, x: number, half: number): void {
  const out = half + 0.7;
  const step = Math.min(0.45, half * 0.45);
  const spots: readonly Spot[] = [
    [x, -out],
    [x, -step],
    [x - step, -step * 0.3],
    [x + step, step * 0.3],
    [x, step],
    [x, out],
  ];
  pen.polyline(spots, { stroke: "hair", data: { edge: "break" } });
}

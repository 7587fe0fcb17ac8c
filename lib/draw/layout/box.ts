/** A point in figure millimetres. */
export type Spot = readonly [x: number, y: number];

/** An upright rectangle in one frame of coordinates. */
export type Box = {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
};

/** The box of the given size around a middle. */
export function boxAround([x, y]: Spot, width: number, height: number): Box {
  return { x0: x - width / 2, y0: y - height / 2, x1: x + width / 2, y1: y + height / 2 };
}

/** The corners of a box in order. */
export function cornersOf({ x0, y0, x1, y1 }: Box): readonly Spot[] {
  return [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ];
}

/** The box grown by `margin` on all sides. */
export function grown(box: Box, margin: number): Box {
  return { x0: box.x0 - margin, y0: box.y0 - margin, x1: box.x1 + margin, y1: box.y1 + margin };
}

/** Whether two boxes share area (touching edges do not count), or with `clear` come nearer than that to one another. */
export function overlaps(a: Box, b: Box, clear = 0): boolean {
  return a.x0 - clear < b.x1 && b.x0 < a.x1 + clear && a.y0 - clear < b.y1 && b.y0 < a.y1 + clear;
}

/** Whether `inner` lies wholly in `outer`. */
export function holds(outer: Box, inner: Box): boolean {
  return (
    inner.x0 >= outer.x0 && inner.x1 <= outer.x1 && inner.y0 >= outer.y0 && inner.y1 <= outer.y1
  );
}

/** The smallest box around all of them; throws without any. */
export function around(boxes: readonly Box[]): Box {
  if (boxes.length === 0) throw new Error("No box to surround");
  return {
    x0: Math.min(...boxes.map((box) => box.x0)),
    y0: Math.min(...boxes.map((box) => box.y0)),
    x1: Math.max(...boxes.map((box) => box.x1)),
    y1: Math.max(...boxes.map((box) => box.y1)),
  };
}

/** The middle of a box. */
export function middle(box: Box): Spot {
  return [(box.x0 + box.x1) / 2, (box.y0 + box.y1) / 2];
}

/** The clear distance between two boxes; 0 when they touch or overlap. */
export function gapBetween(a: Box, b: Box): number {
  const dx = Math.max(0, a.x0 - b.x1, b.x0 - a.x1);
  const dy = Math.max(0, a.y0 - b.y1, b.y0 - a.y1);
  return dx === 0 ? dy : dy === 0 ? dx : Math.sqrt(dx * dx + dy * dy);
}

import { type Box, boxAround, middle, type Spot } from "./box.ts";
import type { LabelSpace, LabelWish } from "./label-candidate.ts";
import { leavingPoint } from "./stretch.ts";

const touching = 0.3;
const directions = 24;
const distances = [1.2, 2.4, 3.6, 5, 6.5, 8, 10, 12];
const shifts = [0, -1.5, 1.5, -3, 3, -5, 5, -7.5, 7.5, -10, 10];

const reachFromMiddle = (box: Box, towards: Spot): number => {
  const [cx, cy] = middle(box);
  const [x, y] = leavingPoint(box, [cx + towards[0], cy + towards[1]]);
  return Math.hypot(x - cx, y - cy);
};

/** The lowest (`side` 1) or highest (`side` -1) the outline goes between two abscissas; undefined where it is not. */
function edgeOver(
  outline: readonly Spot[],
  x0: number,
  x1: number,
  side: 1 | -1,
): number | undefined {
  let edge: number | undefined;
  outline.forEach(([ax, ay], at) => {
    const [bx, by] = outline[(at + 1) % outline.length] ?? [ax, ay];
    const [low, high] = [Math.max(x0, Math.min(ax, bx)), Math.min(x1, Math.max(ax, bx))];
    if (low > high) return;
    for (const x of [low, high]) {
      const y =
        ax === bx
          ? side > 0
            ? Math.max(ay, by)
            : Math.min(ay, by)
          : ay + ((by - ay) * (x - ax)) / (bx - ax);
      if (edge === undefined || side * y > side * edge) edge = y;
    }
  });
  return edge;
}

/** Middles worth trying for one label: touching its hole, in lanes just off the plate's edge, and around it farther out. */
export function labelSpots(wish: LabelWish, space: LabelSpace): Spot[] {
  const { target, width } = wish;
  const { height, outline } = space;
  const [cx, cy] = middle(target);
  const dx = (target.x1 - target.x0 + width) / 2 + touching;
  const dy = (target.y1 - target.y0 + height) / 2 + touching;
  const spots: Spot[] = [];
  for (const part of [0, -0.5, 0.5, -1, 1]) {
    spots.push(
      [cx + part * dx, cy + dy],
      [cx + part * dx, cy - dy],
      [cx + dx, cy + part * dy],
      [cx - dx, cy + part * dy],
    );
  }
  for (const shift of shifts) {
    const x = cx + shift;
    for (const side of [1, -1] as const) {
      const edge = edgeOver(outline, x - width / 2, x + width / 2, side);
      if (edge === undefined) continue;
      for (const row of [0, 1]) spots.push([x, edge + side * (touching + height * (row + 0.5))]);
    }
  }
  const label = boxAround([cx, cy], width, height);
  for (let turn = 0; turn < directions; turn++) {
    const angle = (2 * Math.PI * turn) / directions;
    const towards: Spot = [Math.cos(angle), Math.sin(angle)];
    const start = reachFromMiddle(target, towards) + reachFromMiddle(label, towards);
    for (const distance of distances) {
      spots.push([cx + towards[0] * (start + distance), cy + towards[1] * (start + distance)]);
    }
  }
  return spots;
}

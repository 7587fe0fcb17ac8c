import type { PathPiece, Pen } from "../../canvas.ts";
import { hookWidth } from "../../layout/hooks-box.ts";

/** Hooks at a plate's edge, seen from above: claws that point to the left from the origin, mm. The word stands beside them. */
export function drawClaws(
  pen: Pen,
  hooks: { readonly count: number; readonly depth: number; readonly spread: number },
): void {
  const { count, depth, spread } = hooks;
  const thick = hookWidth(count, spread);
  for (let index = 0; index < count; index += 1) {
    const y = count === 1 ? 0 : -spread / 2 + (spread * index) / (count - 1);
    pen.group("claw", { at: [0, y], data: { part: "hook", depth } }, (inner) =>
      inner.path(claw(depth, thick), { fill: "metal" }),
    );
  }
}

function claw(depth: number, thick: number): readonly PathPiece[] {
  const half = thick / 2;
  return [
    ["M", 0, -half],
    ["L", -depth * 0.45, -half],
    ["C", -depth * 0.8, -half, -depth * 0.95, -half * 0.4, -depth, half * 1.3],
    ["C", -depth * 0.8, half * 0.7, -depth * 0.6, half, -depth * 0.4, half],
    ["L", 0, half],
  ];
}

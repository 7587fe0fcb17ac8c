import type { Pen, Spot } from "../../canvas.ts";
import { boneBetween } from "../bone.ts";
import type { SectionScene } from "./section-scene.ts";

/** A bored stretch: its width and ends, true mm. */
export type Bore = {
  readonly name: string;
  readonly width: number;
  readonly from: number;
  readonly to: number;
};

/** Where bone without a far face begins, in letters: clear of the measures before the tip. */
const besideMeasures = 1.6;
const crack: readonly number[] = [0, 0.5, -0.35, 0.4, -0.5, 0.2, 0];

/** Bone in section, dots only, with what is bored into it; in two pieces where the view has a split. */
export function boneCut(pen: Pen, scene: SectionScene, bores: readonly Bore[]): void {
  const { places, axis, scale, x, top, bottom, letter } = scene;
  const { near, far, cortex, split } = places;
  const [left, right] = [far === undefined ? letter * besideMeasures : x(far), x(near)];
  const rim = cortex * scale;
  pen.group("bone", {}, (group) => {
    const rims = { far: far === undefined ? 0 : rim, near: rim };
    boneBetween(group, [left, right], [top, bottom], rims);
    if (split !== undefined) drawSplit(group, x(split), top, bottom);
    for (const { name, width, from, to } of bores) {
      const half = (width * scale) / 2;
      const [a, b] = [Math.max(x(from), left), x(to)];
      group.box([a, axis - half], b - a, half * 2, {
        fill: "metal",
        stroke: "none",
        data: { bore: name, width },
      });
      for (const y of [axis - half, axis + half]) group.line([a, y], [b, y], { stroke: "hair" });
    }
    for (const face of far === undefined ? [right] : [left, right]) {
      const open = bores.find(({ from, to }) => x(from) <= face + 0.01 && x(to) >= face - 0.01);
      const half = ((open?.width ?? 0) * scale) / 2;
      group.line([face, top], [face, axis - half], { stroke: "bold" });
      group.line([face, axis + half], [face, bottom], { stroke: "bold" });
    }
  });
}

function drawSplit(pen: Pen, x: number, top: number, bottom: number): void {
  const wide = 0.7;
  const edge = (side: number): Spot[] =>
    crack.map(
      (out, index): Spot => [
        x + side * wide + out,
        top + ((bottom - top) * index) / (crack.length - 1),
      ],
    );
  pen.polygon([...edge(-1), ...edge(1).toReversed()], { fill: "metal", stroke: "none" });
  for (const side of [-1, 1])
    pen.polyline(edge(side), { stroke: "bold", data: { edge: "fracture" } });
}

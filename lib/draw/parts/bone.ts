import type { Pen, Spot } from "../canvas.ts";
import { around, boxAround } from "../layout/box.ts";
import { within } from "../layout/outline-points.ts";
import { textWidth } from "../text-widths.ts";
import { apartSizes, type Dots, dots, typeSizes } from "../tokens.ts";
import type { Scene } from "./scene.ts";

const words = "not anatomy";
const [largest, smallest] = [typeSizes.small, apartSizes.least];

/** A box as the run of its corners, mm. */
export const boxRim = ([x, y]: Spot, width: number, height: number): readonly Spot[] => [
  [x, y],
  [x + width, y],
  [x + width, y + height],
  [x, y + height],
];

/** The dots that mean bone, and nothing else, wholly within an area (mm), in staggered rows that lie alike in every figure. */
export function boneDots(pen: Pen, kind: Dots, area: readonly Spot[]): void {
  const { step, size } = dots[kind];
  const half = size / 2;
  const box = around(area.map((spot) => boxAround(spot, 0, 0)));
  const inside = ([x, y]: Spot): boolean =>
    [-half, half].every((off) => within(area, [x + off, y]) && within(area, [x, y + off]));
  const centres: Spot[] = [];
  for (let row = Math.ceil(box.y0 / step); row * step < box.y1; row++) {
    const shift = row % 2 === 0 ? 0 : step / 2;
    for (let column = Math.floor(box.x0 / step); column * step < box.x1; column++)
      centres.push([column * step + shift, row * step]);
  }
  pen.dots(centres.filter(inside), size, { bone: kind });
}

/** Bone from one abscissa to another and from `top` to `bottom`, dots only; `cortex`: how thick its far and its near rim are (0 for none). Millimetres. */
export function boneBetween(
  pen: Pen,
  [from, to]: readonly [number, number],
  [top, bottom]: readonly [number, number],
  cortex: { readonly far: number; readonly near: number },
): void {
  const part = (kind: Dots, left: number, right: number): void => {
    if (right > left) boneDots(pen, kind, boxRim([left, top], right - left, bottom - top));
  };
  part("cortex", from, from + cortex.far);
  part("marrow", from + cortex.far, to - cortex.near);
  part("cortex", to - cortex.near, to);
}

/** A channel drilled into bone: how wide, and to which abscissa, mm. */
export type Channel = { readonly width: number; readonly to: number; readonly from?: number };

/** Bone from the side with its near and far cortex, dots only, the frame's full height, with the channels drilled into it. */
export function drawBone(pen: Pen, scene: Scene, channels: readonly Channel[] = []): void {
  const { bone, height, axis } = scene;
  const [top, bottom] = [0.3, height - 0.3];
  const rims = { far: bone.cortex, near: bone.cortex };
  pen.group("bone", {}, (group) => {
    boneBetween(group, [bone.far, bone.near], [top, bottom], rims);
    for (const { width, to, from = bone.near } of channels) {
      group.box([to, axis - width / 2], from - to, width, { fill: "metal", stroke: "none" });
      for (const y of [axis - width / 2, axis + width / 2])
        group.line([Math.max(to, bone.far), y], [from, y], { stroke: "hair" });
    }
    const gap = (end: "far" | "near"): number =>
      Math.max(
        0,
        ...channels.filter(({ to }) => end === "near" || to < bone.far).map(({ width }) => width),
      );
    for (const end of ["far", "near"] as const) {
      const half = gap(end) / 2;
      group.line([bone[end], top], [bone[end], axis - half], { stroke: "bold" });
      group.line([bone[end], axis + half], [bone[end], bottom], { stroke: "bold" });
    }
  });
  notAnatomy(pen, [0.5, height - 1.1], bone.near - 0.9);
}

/** Says once in a frame, from `x` on the baseline `y`, at most `room` mm long and `most` mm of font size, that its bone is a sign. */
export function notAnatomy(pen: Pen, [x, y]: Spot, room: number, most: number = largest): void {
  const size = Math.max(smallest, most * Math.min(1, room / textWidth(words, most)));
  pen.box([x - 0.2, y - size * 0.78], textWidth(words, size) + 0.4, size * 1.06, {
    fill: "metal",
    stroke: "none",
  });
  pen.words([x, y], words, { size });
}

import type { Filling, Pen, Spot } from "../canvas.ts";
import { textWidth } from "../text-widths.ts";
import type { Scene } from "./scene.ts";

const words = "not anatomy";
const [largest, smallest] = [3.5, 3];

/** The dots that mean bone, and nothing else; `dense` for the cortex. */
export function boneDots(pen: Pen, dense: boolean): Filling {
  const step = dense ? 0.8 : 1.5;
  return pen.filling(dense ? "cortex" : "bone", step, step, (tile) => {
    tile.circle([step / 2, step / 2], dense ? 0.2 : 0.17, { fill: "ink", stroke: "none" });
  });
}

/** A channel drilled into bone: how wide, and to which abscissa, mm. */
export type Channel = { readonly width: number; readonly to: number; readonly from?: number };

/** Bone from the side with its near and far cortex, dots only, the frame's full height, with the channels drilled into it. */
export function drawBone(pen: Pen, scene: Scene, channels: readonly Channel[] = []): void {
  const { bone, height, axis } = scene;
  const [top, bottom] = [0.3, height - 0.3];
  const tall = bottom - top;
  const [dense, sparse] = [boneDots(pen, true), boneDots(pen, false)];
  pen.group("bone", {}, (group) => {
    group.box([bone.far, top], bone.near - bone.far, tall, { fill: sparse, stroke: "none" });
    for (const x of [bone.far, bone.near - bone.cortex])
      group.box([x, top], bone.cortex, tall, { fill: dense, stroke: "none" });
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

/** Says once in a frame, from `x` on the baseline `y` and at most `room` mm long, that its bone is a sign. */
export function notAnatomy(pen: Pen, [x, y]: Spot, room: number): void {
  const size = Math.max(smallest, largest * Math.min(1, room / textWidth(words, largest)));
  pen.box([x - 0.2, y - size * 0.78], textWidth(words, size) + 0.4, size * 1.06, {
    fill: "metal",
    stroke: "none",
  });
  pen.words([x, y], words, { size });
}

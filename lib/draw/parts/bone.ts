import type { Pen, Spot } from "../canvas.ts";
import { around, boxAround } from "../layout/box.ts";
import { within } from "../layout/outline-points.ts";
import { textWidth } from "../text-widths.ts";
import { apartSizes, type Dots, dots, typeSizes } from "../tokens.ts";
import { glidingEnd, glidingWidth, pilotEnd, pilotWidth, type Scene } from "./scene.ts";

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
type Channel = {
  readonly name: "gliding" | "pilot";
  readonly width: number;
  readonly to: number;
  readonly from: number;
};

/** What is drilled in a frame, the near hole first; the pilot hole begins where the gliding one ends. */
function channelsOf(scene: Scene): readonly Channel[] {
  const { gliding, pilot } = scene.parts.drilled ?? {};
  const { near } = scene.bone;
  const channels: Channel[] = [];
  const from = gliding ? glidingEnd(scene) : near;
  if (gliding) channels.push({ name: "gliding", width: glidingWidth(scene), from: near, to: from });
  if (pilot) channels.push({ name: "pilot", width: pilotWidth(scene), from, to: pilotEnd(scene) });
  return channels;
}

/** Where bone ends in a frame of a height, mm; its words stand clear beneath it. */
export const boneFoot = (height: number): number => height - 3.7;

/** Bone from the side with its near and far cortex, dots only, and what is drilled into it by the frame's step. */
export function drawBone(pen: Pen, scene: Scene): void {
  const { bone, height, axis } = scene;
  const [top, bottom] = [0.3, boneFoot(height)];
  const rims = { far: bone.cortex, near: bone.cortex };
  const channels = channelsOf(scene);
  pen.group("bone", {}, (group) => {
    boneBetween(group, [bone.far, bone.near], [top, bottom], rims);
    for (const [index, channel] of channels.entries())
      drawChannel(group, scene, channel, channels[index + 1]?.width ?? 0);
    for (const face of ["far", "near"] as const) {
      const open = channels.filter(({ from, to }) => from >= bone[face] && to < bone[face]);
      const half = Math.max(0, ...open.map(({ width }) => width)) / 2;
      group.line([bone[face], top], [bone[face], axis - half], { stroke: "bold" });
      group.line([bone[face], axis + half], [bone[face], bottom], { stroke: "bold" });
    }
  });
  notAnatomy(pen, [0.5, height], bone.near - 1.6);
}

/** A channel's clear room and its walls; its end is closed but for the narrower one that goes on. */
function drawChannel(
  pen: Pen,
  { axis, bone }: Scene,
  { name, width, from, to }: Channel,
  onward: number,
): void {
  const half = width / 2;
  pen.box([to, axis - half], from - to, width, {
    fill: "metal",
    stroke: "none",
    data: { channel: name },
  });
  for (const side of [-half, half]) {
    pen.line([Math.max(to, bone.far), axis + side], [from, axis + side], { stroke: "hair" });
    if (to > bone.far)
      pen.line([to, axis + side], [to, axis + (Math.sign(side) * onward) / 2], { stroke: "hair" });
  }
}

/** Says once in a figure, from `x` on, over `foot`, at most `room` mm long and `most` mm of font size, that its bone is a sign. */
export function notAnatomy(pen: Pen, [x, foot]: Spot, room: number, most: number = largest): void {
  const size = Math.max(smallest, most * Math.min(1, room / textWidth(words, most)));
  pen.words([x, foot - 0.24 * size], words, { size });
}

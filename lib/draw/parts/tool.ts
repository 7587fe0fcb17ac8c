import type { Instrument } from "../../model/instrument.ts";
import type { Pen } from "../canvas.ts";
import { edges, gaps } from "../tokens.ts";
import { instrumentShape } from "./instrument-parts.ts";
import type { Scene } from "./scene.ts";
import { exampleLength, screwShape } from "./screw-shape.ts";
import { drawShape, type Shape, type Stretch, shapeLength } from "./shape.ts";

const edge = edges.wide;
const gap = gaps.shortened;

const plain = ({ segments }: Shape): Shape => ({ segments });

/** The silhouette of an instrument without the view of its end. */
export function toolShape({ interfaces }: Scene, instrument: Instrument, end?: string): Shape {
  return plain(instrumentShape(instrument, interfaces, end));
}

/** Draws a silhouette along the frame's axis, its tip at `tip` (paper mm), broken off at the frame's right edge or at `until`. */
export function drawTool(
  pen: Pen,
  scene: Scene,
  shape: Shape,
  tip: number,
  until = scene.width - edge,
): void {
  const to = Math.min(shapeLength(shape), (until - tip) / scene.scale);
  if (to > 0.2) drawStretches(pen, scene, shape, tip, [{ from: 0, to, at: 0 }]);
}

/** Draws a silhouette shortened in its middle to lie between `tip` and `until` (paper mm); `back` mm of its far end stay. */
export function drawShortened(
  pen: Pen,
  scene: Scene,
  shape: Shape,
  tip: number,
  until: number,
  back: number,
): void {
  const total = shapeLength(shape);
  const room = (until - tip) / scene.scale;
  if (room >= total) {
    drawTool(pen, scene, shape, tip);
    return;
  }
  const last = Math.min(back, room * 0.6);
  const front = room - last - gap;
  drawStretches(pen, scene, shape, tip, [
    { from: 0, to: front, at: 0 },
    { from: total - last, to: total, at: front + gap },
  ]);
}

function drawStretches(
  pen: Pen,
  scene: Scene,
  shape: Shape,
  tip: number,
  stretches: readonly Stretch[],
): void {
  pen.group("tool", { at: [tip, scene.axis], scale: scene.scale }, (group) =>
    drawShape(group, shape, stretches),
  );
}

/** The chain's screw, as long as fits between two abscissas (paper mm): tip and top of the head. */
export function drawScrew(pen: Pen, scene: Scene, tip: number, top: number): void {
  const { screw } = scene.parts;
  if (!screw) return;
  const fits =
    Math.round(((top - tip) / scene.scale) * 1000) -
    (screw.length_counts_from === "under-head" ? screw.head.height : 0);
  const shape = screwShape(screw, scene.interfaces, fits > 5000 ? fits : exampleLength(screw));
  pen.group("screw", { at: [tip, scene.axis], scale: scene.scale }, (group) =>
    drawShape(group, plain(shape)),
  );
}

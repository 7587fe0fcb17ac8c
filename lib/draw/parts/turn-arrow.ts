import type { Pen } from "../canvas.ts";
import { arrows, edges, gaps } from "../tokens.ts";
import { arrowHead } from "./arrow.ts";
import type { Scene } from "./scene.ts";

type Frame = Pick<Scene, "width" | "height" | "axis">;

/** Half the height of the bow, how far it swings out, and the place it is drawn about, mm. */
function bowOf({ width, height, axis }: Frame): { half: number; bow: number; x: number } {
  const half = Math.min(height * 0.34, arrows.bow, height - axis - 1.8);
  const bow = half * 0.7;
  return { half, bow, x: width - edges.wide - bow * 0.75 };
}

/** Where a tool must end so that the whole turning arrow stands clear behind it, mm. */
export function beforeTurn(scene: Frame): number {
  return bowOf(scene).x - arrows.head / 2 - gaps.shortened;
}

/** An arrow that turns about the frame's axis at its right edge: a heavy bow with its head below, in front of the tool or behind its end. */
export function turnArrow(pen: Pen, scene: Frame): void {
  const { half, bow, x } = bowOf(scene);
  const { axis } = scene;
  pen.path(
    [
      ["M", x - 0.6, axis - half],
      ["C", x + bow, axis - half, x + bow, axis + half * 0.9, x + 0.9, axis + half - 0.5],
    ],
    { stroke: "heavy" },
  );
  arrowHead(pen, [x - 1.2, axis + half + 0.2], Math.PI * 0.9);
}

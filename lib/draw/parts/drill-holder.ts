import type { Pen } from "../canvas.ts";
import { glidingEnd, type Scene } from "./scene.ts";
import { drawShortened, toolShape } from "./tool.ts";

/** What guides the drill in this chain, in its place and shortened to end at `until` (paper mm): insert, sleeve or guide. */
export function drawHolder(pen: Pen, scene: Scene, until: number): void {
  const { parts, plate } = scene;
  const { insert, sleeve, guide, guideEnd } = parts;
  if (insert)
    drawShortened(pen, scene, toolShape(scene, insert), glidingEnd(scene) + 0.4, until, 6);
  else if (sleeve) drawShortened(pen, scene, toolShape(scene, sleeve), plate.from + 0.3, until, 6);
  else if (guide?.kind === "plain-guide") {
    const tip =
      guide.rests_on === "plate-hole" ? plate.from + 0.4 : plate.to - (plate.to - plate.from) * 0.2;
    drawShortened(pen, scene, toolShape(scene, guide, guideEnd), tip, until, 6);
  }
}

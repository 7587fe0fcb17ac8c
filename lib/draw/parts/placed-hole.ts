import type { LaidHole } from "../../model/laid-plate.ts";
import type { Pen } from "../canvas.ts";
import type { Box } from "../layout/box.ts";
import type { FittedPlate } from "../layout/fit-plate.ts";
import { zoneSize } from "../layout/zone-size.ts";
import { drawOpening } from "./opening.ts";

/** A plate's hole at its true place and size, in a group that tells its label and its place on the plate (micrometres).
 * `ring`: the box of a bold ring around a hole that is meant especially. */
export function placedHole(pen: Pen, hole: LaidHole, fitted: FittedPlate, ring?: Box): void {
  const [cx, cy] = fitted.project(hole.at);
  const data = { hole: hole.label, x: hole.at[0], y: hole.at[1], kind: hole.kind };
  pen.group("hole", { at: [cx, cy], data }, (group) => {
    drawOpening(
      group,
      hole.zones.map((zone) => {
        const [x, y] = fitted.project(zone.at);
        const { along, across, through, slot } = zoneSize(zone);
        const size = { along, across, through, slot };
        return {
          kind: zone.kind,
          at: [x - cx, y - cy] as const,
          along: fitted.lengthOf(size.along),
          across: fitted.lengthOf(size.across),
          through: fitted.lengthOf(size.through),
          slot: fitted.lengthOf(size.slot),
        };
      }),
    );
    if (!ring) return;
    const [width, height] = [ring.x1 - ring.x0, ring.y1 - ring.y0];
    group.box([ring.x0 - cx + 0.35, ring.y0 - cy + 0.35], width - 0.7, height - 0.7, { stroke: "heavy" }, Math.min(width, height) / 2 - 0.35);
  });
}

import type { LaidHole } from "../../model/laid-plate.ts";
import type { Pen } from "../canvas.ts";
import type { Box } from "../layout/box.ts";
import type { FittedPlate } from "../layout/fit-plate.ts";
import { zoneSize } from "../layout/zone-size.ts";
import type { ZoneSizes } from "./hole-part.ts";
import { holeParts } from "./hole-parts.ts";

/** A plate's hole at its true place and size, in a group that tells its label and its place on the plate (micrometres).
 * `ring`: the box of a bold ring around a hole that is meant especially. */
export function placedHole(pen: Pen, hole: LaidHole, fitted: FittedPlate, ring?: Box): void {
  const [cx, cy] = fitted.project(hole.at);
  const data = { hole: hole.label, x: hole.at[0], y: hole.at[1], kind: hole.kind };
  pen.group("hole", { at: [cx, cy], data }, (group) => {
    drawZones(group, hole, fitted);
    if (!ring) return;
    const [width, height] = [ring.x1 - ring.x0, ring.y1 - ring.y0];
    group.box(
      [ring.x0 - cx, ring.y0 - cy],
      width,
      height,
      { stroke: "heavy" },
      Math.min(width, height) / 2,
    );
  });
}

function drawZones(pen: Pen, hole: LaidHole, fitted: FittedPlate): void {
  const sizes = hole.zones.map((zone): ZoneSizes => {
    const { across, through, slot } = zoneSize(zone);
    return {
      through: fitted.lengthOf(through),
      seat: fitted.lengthOf(across),
      slot: fitted.lengthOf(slot),
    };
  });
  const at = hole.zones.findIndex((zone) => zone.kind === "threaded");
  const [threaded, plain] = [hole.zones[at], hole.zones[1 - at]];
  if (hole.kind !== "combined" || !threaded || !plain) {
    holeParts[hole.kind].draw(pen, sizes[0] ?? { through: 1 });
    return;
  }
  const [dx, dy] = [plain.at[0] - threaded.at[0], plain.at[1] - threaded.at[1]];
  const middle = [
    (plain.at[0] + threaded.at[0]) / 2 - hole.at[0],
    (plain.at[1] + threaded.at[1]) / 2 - hole.at[1],
  ] as const;
  const turn = (Math.atan2(dy, dx) * 180) / Math.PI;
  pen.group(
    "zones",
    { at: [fitted.lengthOf(middle[0]), fitted.lengthOf(middle[1])], turn },
    (group) => {
      const beside = { through: 1, ...sizes[1 - at], apart: fitted.lengthOf(Math.hypot(dx, dy)) };
      holeParts.combined.draw(group, { through: 1, ...sizes[at], beside });
    },
  );
}

import type { Pen, Spot } from "../canvas.ts";
import { passage, type Scene } from "./scene.ts";

const pitch = 0.9;

/** The edge of a threaded passage: a zigzag through the plate, from the bone's face to the outer face. */
function teeth(from: number, to: number, y: number, inward: 1 | -1): Spot[] {
  const count = Math.max(2, Math.round((to - from) / pitch));
  const step = (to - from) / count;
  return Array.from(
    { length: count * 2 + 1 },
    (_, index): Spot => [from + (index * step) / 2, y + (index % 2 === 0 ? 0 : inward * 0.7)],
  );
}

/** The plate cut through the middle of a hole: two pieces of metal; teeth where the zone has a thread, a widening seat where plain. */
export function drawPlateSection(pen: Pen, scene: Scene): void {
  const { plate, axis, height, parts, scale } = scene;
  const { from, to } = plate;
  const half = passage(scene) / 2;
  const zone = parts.zone;
  const seat = zone && "seat" in zone ? Math.max((zone.seat / 2000) * scale, half) : half;
  pen.group("plate", { data: { zone: zone?.kind ?? "none" } }, (group) => {
    for (const side of [-1, 1] as const) {
      const out = side < 0 ? 0.3 : height - 0.3;
      const lip = axis + side * half;
      const wide = axis + side * seat;
      const edge: readonly Spot[] =
        zone?.kind === "threaded"
          ? teeth(from, to, lip, side < 0 ? 1 : -1)
          : [
              [from, lip],
              [from + (to - from) * 0.35, lip],
              [to - (to - from) * 0.2, axis + side * (half + (seat - half) * 0.7)],
              [to, wide],
            ];
      const spots: Spot[] = [[from, out], ...edge, [to, out]];
      group.polygon(spots, { fill: "metal", stroke: "none" });
      group.polyline(spots, { stroke: "bold" });
    }
  });
}

/** The plate cut where it has no hole. */
export function drawSolidPlate(pen: Pen, { plate, height }: Scene): void {
  pen.box([plate.from, 0.3], plate.to - plate.from, height - 0.6, {
    fill: "metal",
    stroke: "none",
  });
  for (const x of [plate.from, plate.to]) pen.line([x, 0.3], [x, height - 0.3], { stroke: "bold" });
}

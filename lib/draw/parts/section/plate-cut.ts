import type { Pen, Spot } from "../../canvas.ts";
import { inMm } from "../instrument-part.ts";
import { headPitch } from "../screw-shape.ts";
import { headBowl, headThread } from "../segments/head-profile.ts";
import { threadEdge } from "../segments/thread-edge.ts";
import type { SectionScene } from "./section-scene.ts";

/** One edge of the passage from the plate's inner to its outer face as (place, half width), true mm: the head's own thread, or a seat of the head's own form. */
function passageEdge({ places, parts, interfaces }: SectionScene, shift: 0 | 1): readonly Spot[] {
  const { inner, seat, under } = places;
  const { screw, zone } = parts;
  const reach = inMm(zone.through) / 2;
  if (zone.kind === "threaded") {
    const pitch = headPitch(screw, interfaces);
    const length = inMm(screw.head.height);
    const from = Math.max(0, inner - under);
    const teeth = threadEdge(length, headThread(screw.head, pitch), {
      from,
      to: length,
      shift: (shift * pitch) / 2,
    }).map(([x, half]): Spot => [under + x, half]);
    return from > 0 ? teeth : [[inner, reach], [under, reach], ...teeth];
  }
  const bowl = headBowl(screw.head, inMm(screw.core));
  const steps = 16;
  const curve = Array.from({ length: steps + 1 }, (_, index): Spot => {
    const place = seat + ((Math.min(0, under + bowl.height) - seat) * index) / steps;
    return [place, Math.max(reach, bowl.half(place - under))];
  });
  const wide = "seat" in zone ? inMm(zone.seat) / 2 : reach;
  return [[inner, reach], ...curve, [0, Math.max(wide, curve.at(-1)?.[1] ?? 0)]];
}

/** The plate cut through the middle of its hole: two pieces of metal whose passage carries the real thread or seat. */
export function plateCut(pen: Pen, scene: SectionScene): void {
  const { places, parts, axis, scale, x, top, bottom } = scene;
  const data = { zone: parts.zone.kind, thickness: inMm(parts.plateThickness) };
  pen.group("plate", { data }, (group) => {
    for (const side of [-1, 1] as const) {
      const out = side < 0 ? top : bottom;
      const edge = passageEdge(scene, side < 0 ? 0 : 1).map(
        ([place, half]): Spot => [x(place), axis + side * half * scale],
      );
      const spots: readonly Spot[] = [[x(places.inner), out], ...edge, [x(0), out]];
      group.polygon(spots, { fill: "metal", stroke: "none" });
      group.polyline(spots, { stroke: "bold", data: { edge: "passage" } });
    }
  });
}

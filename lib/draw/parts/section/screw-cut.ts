import type { Pen } from "../../canvas.ts";
import { exampleLength, screwShape } from "../screw-shape.ts";
import { drawShape } from "../shape.ts";
import type { SectionScene } from "./section-scene.ts";

/** The screw of a cut view in its place, as long as the view says. */
export function screwCut(
  pen: Pen,
  { places, parts, interfaces, axis, scale, x }: SectionScene,
): void {
  const { screw, length = exampleLength(screw) } = parts;
  const { segments } = screwShape(screw, interfaces, length);
  pen.group("screw", { at: [x(places.tip), axis], scale, data: { screw: screw.id } }, (group) =>
    drawShape(group, { segments }),
  );
}

import type { TrayMapSlot } from "../../../model/figure.ts";
import type { Interfaces } from "../../../model/interfaces.ts";
import type { LaidPlate, Point } from "../../../model/laid-plate.ts";
import type { PathPiece, Pen } from "../../canvas.ts";
import { edges } from "../../tokens.ts";
import { breakOff, breakRoom } from "../break-off.ts";
import { instrumentData } from "../instrument-data.ts";
import { inMm } from "../instrument-part.ts";
import { instrumentShape } from "../instrument-parts.ts";
import { exampleLength, screwData, screwShape } from "../screw-shape.ts";
import { drawShape, type Shape, type Stretch, shapeHalf, shapeLength } from "../shape.ts";

/** What lies in a slot at the tray's scale: its room on paper in mm, drawn from the middle of its left edge; cut to a length where it must be. */
export type SlotPicture = {
  readonly length: number;
  /** Whether its body may be broken off. */
  readonly cuts: boolean;
  /** Its height when `length` of it is drawn. */
  height(length: number): number;
  draw(pen: Pen, length: number): void;
};

const edge = edges.slot;

/** The silhouette of a slot's instrument, plate or example screw at the tray's scale. */
export function slotPicture(
  slot: TrayMapSlot,
  interfaces: Interfaces,
  scale: number,
): SlotPicture | undefined {
  if (slot.plate !== undefined) return platePicture(slot.plate, scale);
  const { instrument, screw } = slot;
  if (instrument !== undefined) {
    const shape = { ...instrumentShape(instrument, interfaces), endViews: [] };
    return shapePicture("instrument", shape, instrumentData(instrument), scale, true);
  }
  if (screw === undefined) return undefined;
  const length = exampleLength(screw);
  return shapePicture(
    "screw",
    screwShape(screw, interfaces, length),
    screwData(screw, length),
    scale,
    false,
  );
}

function shapePicture(
  name: string,
  shape: Shape,
  data: Readonly<Record<string, string | number>>,
  scale: number,
  cuts: boolean,
): SlotPicture {
  const whole = shapeLength(shape);
  const stretches = (length: number): readonly Stretch[] =>
    breakOff(shape, length - edge + 0.001, scale);
  return {
    length: whole * scale + edge,
    cuts,
    height: (length) =>
      shapeHalf(shape, stretches(length)) * 2 * scale +
      (length < whole * scale ? breakRoom * 3 : edge),
    draw(pen, length) {
      pen.group(name, { at: [edge / 2, 0], scale, data: { ...data, scale } }, (inner) =>
        drawShape(inner, shape, stretches(length)),
      );
    },
  };
}

function platePicture(plate: LaidPlate, scale: number): SlotPicture {
  const { min, max } = plate.bounds;
  const middle = (min[1] + max[1]) / 2;
  const at = ([x, y]: Point): [number, number] => [inMm(x - min[0]), inMm(y - middle)];
  const pieces: PathPiece[] = [["M", ...at(plate.outline.start)]];
  for (const segment of plate.outline.segments) {
    if ("line" in segment) pieces.push(["L", ...at(segment.line)]);
    else
      pieces.push(["C", ...at(segment.curve[0]), ...at(segment.curve[1]), ...at(segment.curve[2])]);
  }
  pieces.push(["Z"]);
  return {
    length: inMm(max[0] - min[0]) * scale + edge,
    cuts: false,
    height: () => inMm(max[1] - min[1]) * scale + edge,
    draw(pen) {
      pen.group(
        "plate",
        { at: [edge / 2, 0], scale, data: { plate: plate.id, scale } },
        (inner) => {
          inner.path(pieces, { fill: "metal" });
          for (const hole of plate.holes) inner.circle(at(hole.at), 1.1, { stroke: "hair" });
        },
      );
    },
  };
}

import type { LaidPlate } from "../../model/laid-plate.ts";
import type { Pen } from "../canvas.ts";
import { scaleWords } from "../layout/lay-map.ts";
import { mapLetters } from "../layout/map-letters.ts";
import { textWidth } from "../text-widths.ts";
import { arrow } from "./arrow.ts";

const { size } = mapLetters;
const towards = "towards the body";
const face = "this face up";

function orientation(pen: Pen, plate: LaidPlate, width: number): void {
  const [y, inner] = [5.4, 12];
  const start = plate.proximal === "start";
  const at = (x: number): number => (start ? x : width - x);
  arrow(pen, [at(10.5), y - 1.6], [at(0.5), y - 1.6]);
  pen.words([at(inner), y], towards, { size, weight: 600, anchor: start ? "start" : "end", data: { word: "proximal" } });
  const side = plate.side === "none" ? "" : plate.side.toUpperCase();
  const sideWidth = side === "" ? 0 : textWidth(side, 6.5, 700) + 3;
  if (side !== "") {
    pen.words([at(width - 0.5), y], side, { size: 6.5, weight: 700, anchor: start ? "end" : "start", data: { word: "side" } });
  }
  pen.words([at(width - 0.5 - sideWidth), y], face, { size, anchor: start ? "end" : "start", data: { word: "face" } });
}

function bar(pen: Pen, scale: number, height: number): void {
  const step = scale * 10 > 24 ? 5 : scale * 10 < 4 ? 20 : 10;
  const y = height - 2.2;
  const long = step * scale;
  pen.box([0.5, y - 0.8], long, 1.6, { fill: "ink" });
  pen.box([0.5 + long, y - 0.8], long, 1.6, { fill: "metal" });
  const words = `${2 * step} mm on the plate, ${scaleWords(scale)}`;
  pen.words([0.5 + 2 * long + 2, y + 1.2], words, { size: 3.8, data: { word: "scale" } });
}

/** The words around a plate map: which end lies towards the body, the side, the face, and a scale bar in its own words. */
export function mapFrame(pen: Pen, plate: LaidPlate, scale: number, paper: { readonly width: number; readonly height: number }): void {
  orientation(pen, plate, paper.width);
  bar(pen, scale, paper.height);
}

import type { LaidPlate } from "../../model/laid-plate.ts";
import type { Pen } from "../canvas.ts";
import { scaleWords } from "../layout/lay-map.ts";
import { mapLetters } from "../layout/map-letters.ts";
import { mapStrips } from "../layout/map-strips.ts";
import { textWidth } from "../text-widths.ts";
import { edges, gaps, typeSizes } from "../tokens.ts";
import { arrow } from "./arrow.ts";

const { size, note: scaleSize } = mapLetters;
const towards = "towards the body";
const face = "this face up";
const [edge, shaft, baseline] = [edges.bold, 11.5, 5.2];
const sideSize = typeSizes.called;
const gap = gaps.words;

/** The arrow with its words at the proximal end, the side and the face at the other; returns how much each takes (mm). */
function orientation(
  pen: Pen,
  plate: LaidPlate,
  width: number,
): { proximal: number; distal: number } {
  const start = plate.proximal === "start";
  const at = (x: number): number => (start ? x : width - x);
  const [here, there] = start ? (["start", "end"] as const) : (["end", "start"] as const);
  arrow(pen, [at(shaft - 1.5), baseline - 1.6], [at(edge), baseline - 1.6]);
  pen.words([at(shaft), baseline], towards, {
    size,
    weight: 600,
    anchor: here,
    data: { word: "proximal" },
  });
  const side = plate.side === "none" ? "" : plate.side.toUpperCase();
  const sideWidth = side === "" ? 0 : textWidth(side, sideSize, 700) + 3;
  if (side !== "")
    pen.words([at(width - edge), baseline], side, {
      size: sideSize,
      weight: 700,
      anchor: there,
      data: { word: "side" },
    });
  pen.words([at(width - edge - sideWidth), baseline], face, {
    size,
    anchor: there,
    data: { word: "face" },
  });
  return {
    proximal: shaft + textWidth(towards, size, 600),
    distal: edge + sideWidth + textWidth(face, size),
  };
}

/** A bar in two halves that measures the plate, `left` to its right its words; on the line `y`. */
function bar(
  pen: Pen,
  scale: number,
  long: number,
  [left, y]: readonly [number, number],
  words: string,
): void {
  const half = (long * scale) / 2;
  pen.box([left, y - 2], half, 1.6, { fill: "ink" });
  pen.box([left + half, y - 2], half, 1.6, { fill: "metal" });
  pen.words([left + 2 * half + gap, y], words, { size: scaleSize, data: { word: "scale" } });
}

/** The longest round length (mm of plate) whose bar is at most `room` mm of paper. */
function roundLength(scale: number, room: number): number {
  return [50, 20, 10, 5, 2].find((long) => long * scale <= room) ?? 1;
}

/** The words around a plate map: which end lies towards the body, the side, the face, and a scale bar in its own words. */
export function mapFrame(
  pen: Pen,
  plate: LaidPlate,
  scale: number,
  paper: { readonly width: number; readonly height: number },
): void {
  const { proximal, distal } = orientation(pen, plate, paper.width);
  const said = scaleWords(scale);
  if (!mapStrips(paper.width).compact) {
    const long = roundLength(scale, 40);
    const words = `${long} mm on the plate, ${said}`;
    bar(pen, scale, long, [edge, paper.height - 1.2], words);
    return;
  }
  const [left, right] = plate.proximal === "start" ? [proximal, distal] : [distal, proximal];
  const room = paper.width - left - right - 8;
  const forms = [`mm on the plate, ${said}`, `mm, ${said.replace("drawn at ", "")}`];
  const spare = forms.map((form) => room - gap - textWidth(`20 ${form}`, scaleSize));
  const full = (spare[0] ?? 0) > 20;
  const long = roundLength(scale, Math.min(24, (full ? spare[0] : spare[1]) ?? 0));
  const words = `${long} ${full ? forms[0] : forms[1]}`;
  const taken = long * scale + gap + textWidth(words, scaleSize);
  bar(pen, scale, long, [left + 4 + (room - taken) / 2, baseline], words);
}

import type { Interfaces } from "../../../model/interfaces.ts";
import type { Pen } from "../../canvas.ts";
import { gaps, marks, typeSizes } from "../../tokens.ts";
import { inMm } from "../instrument-part.ts";
import { instrumentShape } from "../instrument-parts.ts";
import { drawShape, shapeHalf, shapeLength } from "../shape.ts";
import { drawLookAlikeStrip, stripWidth } from "../tray/look-alike-strip.ts";
import { freeWords, type TablePlace } from "./table-rows.ts";

const letter = typeSizes.small;
/** Millimetres: between an instrument's foot and the baselines of its words, the strip's height, and how far it stands from the tool. */
const [line, strip, beside] = [letter * 1.1, marks.stripHeight, gaps.shortened];

/** How words stand to the tool: under its foot on the scrub side (1), over it on the other (-1). */
export type Far = 1 | -1;

/** Draws one place with its foot at the origin: the tool, its words and what tells it from its look-alikes, or a place left free. */
export function drawTablePlace(
  pen: Pen,
  { item, width, tell }: TablePlace,
  interfaces: Interfaces,
  { scale, far }: { readonly scale: number; readonly far: Far },
): void {
  const middle = width / 2;
  if (item === undefined) {
    pen.box([0, far > 0 ? -strip : 0], width, strip, { stroke: "hair", dash: "hidden" });
    pen.words([middle, far > 0 ? letter : -0.4 * letter], freeWords, {
      size: letter,
      anchor: "middle",
    });
    return;
  }
  const shape = { segments: instrumentShape(item.instrument, interfaces).segments };
  const long = shapeLength(shape) * scale;
  const size = item.instrument.kind === "plain-guide" ? 0 : shapeLength(shape) * 1000;
  pen.group(
    "tool",
    {
      at: [middle, -far * long],
      turn: far * 90,
      scale,
      data: { tool: item.instrument.id, length: inMm(size) },
    },
    (inner) => drawShape(inner, shape),
  );
  const [noun, number] = item.words;
  const foot = far > 0 ? letter : -0.4 * letter - line;
  const set = (row: number, text: string, weight: 400 | 700 = 400): void =>
    pen.words([middle, foot + row * line], text, { size: letter, weight, anchor: "middle" });
  set(0, noun);
  set(1, number, 700);
  const told = tell?.runs ?? [];
  for (const [row, { text }] of told.entries()) set(far > 0 ? row + 2 : row - told.length, text);
  if (tell === undefined) return;
  const at = [
    middle - shapeHalf(shape) * scale - beside - stripWidth,
    far > 0 ? -strip : 0,
  ] as const;
  pen.group("alike", { at }, (inner) => drawLookAlikeStrip(inner, strip));
}

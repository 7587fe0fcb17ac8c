import { mm, type Um } from "../../../model/measure.ts";
import type { Pen } from "../../canvas.ts";
import { textWidth } from "../../text-widths.ts";
import { gaps } from "../../tokens.ts";
import { arrow } from "../arrow.ts";
import { inMm } from "../instrument-part.ts";
import { dimension } from "./dimension.ts";
import {
  extension,
  headMeasure,
  lengthMeasure,
  overhead,
  pitchMeasure,
  plateMeasure,
  say,
  threadMeasures,
} from "./section-measures.ts";
import type { SectionScene } from "./section-scene.ts";

const told = { weight: 400 } as const;
const amid = { weight: 400, anchor: "middle" } as const;

/** Measures of a seated screw, and what its head does. */
export function seatedWords(pen: Pen, scene: SectionScene): void {
  const { places, parts, x, axis, top, bottom, letter } = scene;
  plateMeasure(pen, scene);
  lengthMeasure(pen, scene);
  threadMeasures(pen, scene);
  pitchMeasure(pen, scene);
  headMeasure(pen, scene);
  if (parts.zone.kind === "threaded") {
    const left = x(places.top) + 4.4;
    say(pen, scene, [left, axis + letter * 1.53], "held by the", told);
    say(pen, scene, [left, axis + letter * 2.62], "plate's thread", told);
    return;
  }
  const face = x(0) + 0.8;
  for (const y of [top + 3, bottom - 3]) arrow(pen, [face + letter * 1.85, y], [face, y]);
  const left = face + letter * 2.1;
  const first = Math.min(top + letter * 1.2, axis - letter * 2);
  say(pen, scene, [left, first], "draws the", told);
  say(pen, scene, [left, first + letter * 1.09], "plate down", told);
}

/** A line of words over a hole, and where its middle stands, mm. */
type OverHole = { readonly text: string; readonly middle: number; readonly weight?: 400 };

/** The width of a hole within it; above the picture, one under another, which hole comes first, the drill that makes it, and its width. */
function holeMeasure(
  pen: Pen,
  scene: SectionScene,
  at: number,
  hole: { readonly name: string; readonly width: Um; readonly over: readonly OverHole[] },
): void {
  const { axis, scale, top, letter } = scene;
  const half = (inMm(hole.width) * scale) / 2;
  const measure = { name: hole.name, size: inMm(hole.width) };
  dimension(pen, measure, [at, axis - half], [at, axis + half]);
  extension(pen, [at, top - letter * 0.74], [at, axis - half]);
  const [y, line] = [overhead(scene), letter * 1.14];
  for (const [row, { text, middle, ...look }] of hole.over.entries())
    say(pen, scene, [middle, y + row * line], text, { anchor: "middle", ...look });
}

/** The middles of the two pieces of bone on paper, mm. */
function pieces({ places, x }: SectionScene): { readonly far: number; readonly near: number } {
  const { near, tip, far = tip, split = (near + tip) / 2 } = places;
  return { far: x((far + split) / 2), near: x((split + near) / 2) };
}

/** Where the middles of two words stand over the pieces, mm: over their middles, or as far aside that half a letter stays between them, on the paper. */
function middlesOf(
  { letter }: SectionScene,
  at: ReturnType<typeof pieces>,
  [far, near]: readonly [string, string],
): readonly [number, number] {
  const [halfFar, halfNear] = [textWidth(far, letter) / 2, textWidth(near, letter) / 2];
  const between = halfFar + halfNear + letter / 2;
  const aside = Math.max(0, between - (at.near - at.far)) / 2;
  const first = Math.max(at.far - aside, halfFar + gaps.touching);
  return [first, Math.max(at.near + aside, first + between)];
}

/** The widths of a lag screw's two holes. */
export function lagHolesWords(pen: Pen, scene: SectionScene): void {
  const { parts, bottom, x, places, top, letter } = scene;
  const at = pieces(scene);
  const { pilot, gliding, major } = parts.screw;
  const wide = gliding ?? major;
  const rows = [
    { words: ["then", "first"] },
    { words: ["pilot drill", "gliding drill"], ...told },
    { words: [mm(pilot), mm(wide)] },
  ] as const;
  const over = (piece: 0 | 1): readonly OverHole[] =>
    rows.map(({ words, ...look }) => ({
      text: words[piece],
      middle: middlesOf(scene, at, words)[piece],
      ...look,
    }));
  holeMeasure(pen, scene, at.far, { name: "pilot", width: pilot, over: over(0) });
  holeMeasure(pen, scene, at.near, { name: "gliding", width: wide, over: over(1) });
  const names = ["far piece", "near piece"] as const;
  for (const [piece, middle] of middlesOf(scene, at, names).entries())
    say(pen, scene, [middle, bottom + letter * 1.25], names[piece] ?? "", amid);
  const thickness = `plate ${mm(parts.plateThickness)}`;
  say(pen, scene, [x(places.inner) + 1, top - letter * 0.34], thickness);
}

/** What a lag screw's thread does in each piece. */
export function lagSeatedWords(pen: Pen, scene: SectionScene): void {
  const { places, x, axis, scale, parts, top } = scene;
  const { near, tip, far = tip, split = (near + tip) / 2 } = places;
  lengthMeasure(pen, scene);
  const rim = axis - (inMm(parts.screw.major) / 2) * scale;
  const y = (top + rim) / 2;
  for (const [side, wide] of [
    [-1, split - far],
    [1, near - split],
  ] as const) {
    const out = x(split) + side * Math.min(9, wide * scale * 0.7);
    const end = x(split) + side * 1.6;
    pen.box([Math.min(out, end) - 0.4, y - 1.6], Math.abs(out - end) + 0.8, 3.2, {
      fill: "metal",
      stroke: "none",
    });
    arrow(pen, [out, y], [end, y]);
  }
  const at = pieces(scene);
  say(pen, scene, [at.far, overhead(scene)], "thread grips", { anchor: "middle" });
  say(pen, scene, [at.near, overhead(scene)], "glides", { anchor: "middle" });
  for (const place of [at.far, at.near]) extension(pen, [place, overhead(scene) + 1], [place, top]);
}

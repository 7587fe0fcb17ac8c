import { mm, type Um } from "../../../model/measure.ts";
import type { Pen } from "../../canvas.ts";
import { textWidth } from "../../text-widths.ts";
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
  say(pen, scene, [left, top + letter * 1.2], "draws the", told);
  say(pen, scene, [left, top + letter * 2.29], "plate down", told);
}

/** The width of a hole within it, named above the picture by the drill that makes it; over it stands which comes first; the name stands `aside` of the leader, mm. */
function holeMeasure(
  pen: Pen,
  scene: SectionScene,
  at: number,
  {
    name,
    width,
    order,
    aside,
  }: {
    readonly name: string;
    readonly width: Um;
    readonly order: string;
    readonly aside: number;
  },
): void {
  const { axis, scale, top, letter } = scene;
  const half = (inMm(width) * scale) / 2;
  dimension(pen, { name, size: inMm(width) }, [at, axis - half], [at, axis + half]);
  extension(pen, [at, top - letter * 0.74], [at, axis - half]);
  const [y, line] = [overhead(scene), letter * 1.14];
  say(pen, scene, [at, y], order, { anchor: "middle" });
  say(pen, scene, [at + aside, y + line], `${name} drill`, amid);
  say(pen, scene, [at, y + line * 2], mm(width), { anchor: "middle" });
}

/** The middles of the two pieces of bone on paper, mm. */
function pieces({ places, x }: SectionScene): { readonly far: number; readonly near: number } {
  const { near, tip, far = tip, split = (near + tip) / 2 } = places;
  return { far: x((far + split) / 2), near: x((split + near) / 2) };
}

/** How far each of two words over the pieces must stand aside of their middle, so that half a letter stays between them, mm. */
function asideOf(
  { letter }: SectionScene,
  at: ReturnType<typeof pieces>,
  names: readonly [string, string],
): number {
  const halves = names.reduce((sum, name) => sum + textWidth(name, letter) / 2, letter / 2);
  return Math.max(0, halves - (at.near - at.far)) / 2;
}

/** The widths of a lag screw's two holes. */
export function lagHolesWords(pen: Pen, scene: SectionScene): void {
  const { parts, bottom, x, places, top, letter } = scene;
  const at = pieces(scene);
  const { pilot, gliding, major } = parts.screw;
  const drills = asideOf(scene, at, ["pilot drill", "gliding drill"]);
  holeMeasure(pen, scene, at.far, {
    name: "pilot",
    width: pilot,
    order: "then",
    aside: -drills,
  });
  holeMeasure(pen, scene, at.near, {
    name: "gliding",
    width: gliding ?? major,
    order: "first",
    aside: drills,
  });
  const [far, near] = ["far piece", "near piece"] as const;
  const aside = asideOf(scene, at, [far, near]);
  say(pen, scene, [at.far - aside, bottom + letter * 1.25], far, amid);
  say(pen, scene, [at.near + aside, bottom + letter * 1.25], near, amid);
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

import { mm, type Um, wholeMm } from "../../../model/measure.ts";
import type { Pen, Spot } from "../../canvas.ts";
import { textWidth } from "../../text-widths.ts";
import { arrow } from "../arrow.ts";
import { inMm } from "../instrument-part.ts";
import { exampleLength, screwShape } from "../screw-shape.ts";
import { dimension } from "./dimension.ts";
import type { SectionScene } from "./section-scene.ts";

const size = 3.5;
const wordsLine = 3;
const example = "an example length from the rack";

/** Words on a white ground, so that dots never run through them. */
function plain(
  pen: Pen,
  at: Spot,
  text: string,
  anchor: "start" | "middle" | "end" = "start",
  weight: 400 | 600 = 600,
): void {
  pen.words(at, text, { size, weight, anchor });
}

/** Extension lines from a feature to its measure. */
function extension(pen: Pen, from: Spot, to: Spot): void {
  pen.line(from, to, { stroke: "hair" });
}

/** The plate's thickness above the picture. */
function plateMeasure(pen: Pen, { places, parts, x, top }: SectionScene): void {
  const y = wordsLine + 2.6;
  const [a, b] = [x(places.inner), x(0)];
  for (const at of [a, b]) extension(pen, [at, top], [at, y - 0.8]);
  dimension(pen, { name: "plate", size: inMm(parts.plateThickness) }, [a, y], [b, y]);
  plain(pen, [a - 1, wordsLine], `plate ${mm(parts.plateThickness)}`);
}

/** The screw's length beneath the picture, from its tip to where its length counts from. */
function lengthMeasure(
  pen: Pen,
  { places, parts, x, axis, scale, bottom, height }: SectionScene,
): void {
  const { screw } = parts;
  const length = exampleLength(screw);
  const datum = screw.length_counts_from === "head-top" ? places.top : places.under;
  const y = bottom + 3;
  const [a, b] = [x(places.tip), x(datum)];
  extension(pen, [a, axis + 0.4], [a, y + 0.8]);
  extension(pen, [b, axis + (inMm(screw.head.diameter) / 2) * scale], [b, y + 0.8]);
  dimension(pen, { name: "length", size: inMm(length) }, [a, y], [b, y]);
  const words = `${wholeMm(length)}: ${example}`;
  plain(pen, [Math.max(b - textWidth(words, size, 600), 22), height - 1], words);
}

/** Outer and core diameter of the thread before the tip. */
function threadMeasures(pen: Pen, { places, parts, x, axis, scale, height }: SectionScene): void {
  const { major, core } = parts.screw;
  const edge = x(places.tip) + 2.4 * scale;
  const outer = [1.6, inMm(major)] as const;
  const inside = [4.4, inMm(core)] as const;
  for (const [at, wide] of [outer, inside]) {
    for (const side of [-1, 1]) {
      const y = axis + (side * wide * scale) / 2;
      extension(pen, [at - 0.8, y], [edge, y]);
    }
  }
  const ends = ([at, wide]: readonly [number, number]): [Spot, Spot] => [
    [at, axis - (wide * scale) / 2],
    [at, axis + (wide * scale) / 2],
  ];
  dimension(pen, { name: "thread", size: inMm(major) }, ...ends(outer));
  dimension(pen, { name: "core", size: inMm(core) }, ...ends(inside));
  extension(pen, [outer[0], wordsLine + 1], [outer[0], axis - (outer[1] * scale) / 2]);
  plain(pen, [0.4, wordsLine], `thread ${mm(major)}`);
  extension(pen, [inside[0], axis + (inside[1] * scale) / 2], [inside[0], height - 4.4]);
  plain(pen, [0.4, height - 1], `core ${mm(core)}`);
}

/** One pitch of the thread, from crest to crest, named above the picture. */
function pitchMeasure(pen: Pen, { places, parts, interfaces, x, axis, scale }: SectionScene): void {
  const { screw } = parts;
  const pitch = inMm(screw.pitch);
  const [tip, body] = screwShape(screw, interfaces, exampleLength(screw)).segments;
  const threaded = body?.length ?? 0;
  const turns = Math.max(0, Math.floor((threaded / 2 - pitch / 2) / pitch));
  const crest = places.tip + (tip?.length ?? 0) + pitch / 2 + turns * pitch;
  const [a, b] = [x(crest), x(crest + pitch)];
  const rim = axis - (inMm(screw.major) / 2) * scale;
  const y = rim - 2.6;
  pen.box([a - 3.6, y - 1.2], b - a + 7.2, 2.4, { fill: "metal", stroke: "none" });
  for (const at of [a, b]) extension(pen, [at, rim - 0.4], [at, y - 0.8]);
  dimension(pen, { name: "pitch", size: pitch }, [a, y], [b, y]);
  extension(pen, [(a + b) / 2, wordsLine + 1], [(a + b) / 2, y]);
  plain(pen, [(a + b) / 2, wordsLine], `pitch ${mm(screw.pitch)}`, "middle");
}

/** The head's width beside it. */
function headMeasure(pen: Pen, { places, parts, x, axis, scale }: SectionScene): void {
  const wide = inMm(parts.screw.head.diameter);
  const at = x(places.top) + 3;
  for (const side of [-1, 1]) {
    const y = axis + (side * wide * scale) / 2;
    extension(pen, [x(places.top) + 0.6, y], [at + 0.8, y]);
  }
  dimension(
    pen,
    { name: "head", size: wide },
    [at, axis - (wide * scale) / 2],
    [at, axis + (wide * scale) / 2],
  );
  plain(pen, [at + 1.4, axis + size / 3], `head ${mm(parts.screw.head.diameter)}`);
}

/** Measures of a seated screw, and what its head does. */
export function seatedWords(pen: Pen, scene: SectionScene): void {
  const { places, parts, x, axis, top, bottom } = scene;
  plateMeasure(pen, scene);
  lengthMeasure(pen, scene);
  threadMeasures(pen, scene);
  pitchMeasure(pen, scene);
  headMeasure(pen, scene);
  const right = x(0) + 1.2;
  if (parts.zone.kind === "threaded") {
    const beside = x(places.top) + 4.4;
    plain(pen, [beside, axis + size / 3 + 4.2], "held by the", "start", 400);
    plain(pen, [beside, axis + size / 3 + 8], "plate's thread", "start", 400);
    return;
  }
  for (const y of [top + 3, bottom - 3]) arrow(pen, [right + 7, y], [right - 0.4, y]);
  plain(pen, [right + 8, top + 4.2], "draws the", "start", 400);
  plain(pen, [right + 8, top + 8], "plate down", "start", 400);
}

/** The width of a hole within it, named above the picture by the drill that makes it. */
function holeMeasure(
  pen: Pen,
  { axis, scale, top }: SectionScene,
  at: number,
  { name, width }: { readonly name: string; readonly width: Um },
): void {
  const half = (inMm(width) * scale) / 2;
  dimension(pen, { name, size: inMm(width) }, [at, axis - half], [at, axis + half]);
  extension(pen, [at, top - 2.6], [at, axis - half]);
  plain(pen, [at, wordsLine], `${name} drill`, "middle", 400);
  plain(pen, [at, wordsLine + 4], mm(width), "middle");
}

/** The middles of the two pieces of bone on paper, mm. */
function pieces({ places, x }: SectionScene): { readonly far: number; readonly near: number } {
  const { near, tip, far = tip, split = (near + tip) / 2 } = places;
  return { far: x((far + split) / 2), near: x((split + near) / 2) };
}

/** The widths of a lag screw's two holes. */
export function lagHolesWords(pen: Pen, scene: SectionScene): void {
  const { parts, bottom, x, places, top } = scene;
  const at = pieces(scene);
  const { pilot, gliding, major } = parts.screw;
  holeMeasure(pen, scene, at.far, { name: "pilot", width: pilot });
  holeMeasure(pen, scene, at.near, { name: "gliding", width: gliding ?? major });
  plain(pen, [at.far, bottom + 4.4], "far piece", "middle", 400);
  plain(pen, [at.near, bottom + 4.4], "near piece", "middle", 400);
  plain(pen, [x(places.inner) + 1, top - 1.2], `plate ${mm(parts.plateThickness)}`);
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
  plain(pen, [at.far, wordsLine], "thread grips", "middle");
  plain(pen, [at.near, wordsLine], "glides", "middle");
  for (const place of [at.far, at.near]) extension(pen, [place, wordsLine + 1], [place, top]);
}

import { mm, wholeMm } from "../../../model/measure.ts";
import type { Pen, Spot } from "../../canvas.ts";
import { textWidth } from "../../text-widths.ts";
import { measures } from "../../tokens.ts";
import { inMm } from "../instrument-part.ts";
import { exampleLength, screwShape } from "../screw-shape.ts";
import { dimension } from "./dimension.ts";
import type { SectionScene } from "./section-scene.ts";

const example = "an example length from the rack";
/** Least room between two words over a picture, in letters. */
const apart = 0.5;

/** Words of a cut view: semibold where they name a size, plain where they tell something. */
export function say(
  pen: Pen,
  { letter }: SectionScene,
  at: Spot,
  text: string,
  how: { readonly anchor?: "start" | "middle" | "end"; readonly weight?: 400 | 600 } = {},
): void {
  pen.words(at, text, { size: letter, weight: 600, ...how });
}

/** Baseline of the words over a picture, mm. */
export const overhead = ({ letter }: SectionScene): number => letter * 0.86;

/** A thin line from a feature to its measure or its words. */
export function extension(pen: Pen, from: Spot, to: Spot): void {
  pen.line(from, to, { stroke: "hair" });
}

/** The plate's thickness above the picture. */
export function plateMeasure(pen: Pen, scene: SectionScene): void {
  const { places, parts, x, top, letter } = scene;
  const y = overhead(scene) + letter * 0.74;
  const [a, b] = [x(places.inner), x(0)];
  for (const at of [a, b]) extension(pen, [at, top], [at, y - measures.past]);
  dimension(pen, { name: "plate", size: inMm(parts.plateThickness) }, [a, y], [b, y]);
  const start = Math.max(a - 1, pitchWords(scene).end + letter * apart);
  say(pen, scene, [start, overhead(scene)], `plate ${mm(parts.plateThickness)}`);
}

/** The screw's length beneath the picture, from its tip to where its length counts from. */
export function lengthMeasure(pen: Pen, scene: SectionScene): void {
  const { places, parts, x, axis, scale, bottom, height, width, letter } = scene;
  const { screw } = parts;
  const length = exampleLength(screw);
  const y = bottom + letter * 1.2;
  const [a, b] = [x(places.tip), x(places.datum)];
  extension(pen, [a, axis + 0.4], [a, y + measures.past]);
  extension(pen, [b, axis + (inMm(screw.head.diameter) / 2) * scale], [b, y + measures.past]);
  dimension(pen, { name: "length", size: inMm(length) }, [a, y], [b, y]);
  const words = `${wholeMm(length)}: ${example}`;
  const long = textWidth(words, letter, 600);
  const start = Math.min(Math.max(b - long, letter * 6.2), width - long);
  say(pen, scene, [start, height - letter * 0.28], words);
}

/** Outer and core diameter of the thread, before the tip. */
export function threadMeasures(pen: Pen, scene: SectionScene): void {
  const { places, parts, x, axis, scale, height, letter } = scene;
  const { major, core } = parts.screw;
  const [outer, inside] = [letter * 0.45, letter * 1.25];
  const measure = (name: string, at: number, width: number): void => {
    const half = (width * scale) / 2;
    for (const y of [axis - half, axis + half])
      extension(pen, [at - measures.past, y], [x(places.tip) + 2.4 * scale, y]);
    dimension(pen, { name, size: width }, [at, axis - half], [at, axis + half]);
  };
  measure("thread", outer, inMm(major));
  measure("core", inside, inMm(core));
  extension(pen, [outer, overhead(scene) + 1], [outer, axis - (inMm(major) * scale) / 2]);
  say(pen, scene, [0.4, overhead(scene)], threadWords(parts));
  const foot = height - letter * 0.28;
  extension(pen, [inside, axis + (inMm(core) * scale) / 2], [inside, foot - letter]);
  say(pen, scene, [0.4, foot], `core ${mm(core)}`);
}

/** Where one pitch of the thread lies on paper, the words for it, and where they begin and end: beside those of the thread, else over the middle of the pitch. */
function pitchWords({ places, parts, interfaces, x, letter }: SectionScene) {
  const { screw } = parts;
  const pitch = inMm(screw.pitch);
  const [tip, body] = screwShape(screw, interfaces, exampleLength(screw)).segments;
  const turns = Math.max(0, Math.floor(((body?.length ?? 0) / 2 - pitch / 2) / pitch));
  const crest = places.tip + (tip?.length ?? 0) + pitch / 2 + turns * pitch;
  const words = `pitch ${mm(screw.pitch)}`;
  const long = textWidth(words, letter, 600);
  const [a, b] = [x(crest), x(crest + pitch)];
  const after = 0.4 + textWidth(threadWords(parts), letter, 600) + letter * apart;
  const start = Math.max((a + b - long) / 2, after);
  return { pitch, a, b, words, start, end: start + long };
}

const threadWords = ({ screw }: SectionScene["parts"]): string => `thread ${mm(screw.major)}`;

/** One pitch of the thread, from crest to crest, named above the picture. */
export function pitchMeasure(pen: Pen, scene: SectionScene): void {
  const { parts, axis, scale } = scene;
  const { pitch, a, b, words, start } = pitchWords(scene);
  const rim = axis - (inMm(parts.screw.major) / 2) * scale;
  const y = rim - 2.6;
  pen.box([a - 3.6, y - 1.2], b - a + 7.2, 2.4, { fill: "metal", stroke: "none" });
  for (const at of [a, b]) extension(pen, [at, rim - 0.4], [at, y - measures.past]);
  dimension(pen, { name: "pitch", size: pitch }, [a, y], [b, y]);
  const middle = (a + b) / 2;
  extension(pen, [middle, overhead(scene) + 1], [middle, y]);
  say(pen, scene, [start, overhead(scene)], words);
}

/** The head's width beside it. */
export function headMeasure(pen: Pen, scene: SectionScene): void {
  const { places, parts, x, axis, scale, letter } = scene;
  const wide = inMm(parts.screw.head.diameter);
  const at = x(places.top) + 3;
  const half = (wide * scale) / 2;
  for (const y of [axis - half, axis + half])
    extension(pen, [x(places.top) + 0.6, y], [at + measures.past, y]);
  dimension(pen, { name: "head", size: wide }, [at, axis - half], [at, axis + half]);
  say(pen, scene, [at + 1.4, axis + letter / 3], `head ${mm(parts.screw.head.diameter)}`);
}

import type { Figure, Pictures } from "../../model/figure.ts";
import { type Um, wholeMm } from "../../model/measure.ts";
import { drawFigure, type Pen } from "../canvas.ts";
import { inMm } from "../parts/instrument-part.ts";
import { boneCut } from "../parts/section/bone-cut.ts";
import { dimension } from "../parts/section/dimension.ts";
import { plateCut } from "../parts/section/plate-cut.ts";
import { screwCut } from "../parts/section/screw-cut.ts";
import { extension, say } from "../parts/section/section-measures.ts";
import { sectionPlaces } from "../parts/section/section-places.ts";
import type { SectionScene } from "../parts/section/section-scene.ts";
import { typeSizes } from "../tokens.ts";

/** Room in letters: above the picture, between its rows and under the last, before the tips, beside the heads. */
const room = { above: 1.7, between: 1.7, left: 2, right: 4.9 };

/** One row: the hole with one screw in it, and how far its tip is from where it was to be. */
function drawRow(pen: Pen, scene: SectionScene, target: number, off: Um): void {
  const { places, parts, axis, bottom, letter, x, scale } = scene;
  boneCut(pen, scene, [
    { name: "pilot", width: inMm(parts.screw.pilot), from: places.far ?? 0, to: places.near },
  ]);
  plateCut(pen, scene);
  screwCut(pen, scene);
  const [aim, tip] = [x(target), x(places.tip)];
  const y = bottom + letter * 0.5;
  extension(pen, [tip, axis + (inMm(parts.screw.core) / 4) * scale], [tip, y + 0.8]);
  const [a, b] = [Math.min(aim, tip), Math.max(aim, tip)];
  dimension(pen, { name: off < 0 ? "short" : "long", size: inMm(Math.abs(off)) }, [a, y], [b, y]);
  const words = `${wholeMm(Math.abs(off))} ${off < 0 ? "short" : "long"}`;
  say(pen, scene, [b + 3.4, y + letter * 0.6], words);
  const screw = `screw ${wholeMm(parts.length ?? 0)}`;
  say(pen, scene, [x(places.top) + 1.6, axis + letter / 3], screw);
}

/** A reading that no screw of the rack answers: the next shorter and the next longer screw in the same hole, at one scale, each with what it is short or long by. */
export const deadReading: Pictures["deadReading"] = (id, dead, parts, interfaces, size) => {
  const { width, height, letter = typeSizes.small } = size;
  const { reading, add, shorter, longer } = dead;
  const target = reading + add;
  const rows = [shorter, longer].map((length) => {
    const own = { ...parts, length };
    const places = sectionPlaces("seated", own);
    return { own, places: { ...places, far: places.datum - inMm(reading) } };
  });
  const [top, tip] = [rows[0]?.places.top ?? 0, rows[1]?.places.tip ?? 0];
  const tall = (height - (room.above + 2 * room.between) * letter) / 2;
  const wide = inMm(parts.screw.head.diameter) + 2;
  const scale = Math.min((width - (room.left + room.right) * letter) / (top - tip), tall / wide);
  const x = (place: number): number => room.left * letter + (place - tip) * scale;
  const scenes = rows.map(({ own, places }, index): SectionScene => {
    const from = room.above * letter + index * (tall + room.between * letter);
    const strip = { top: from, bottom: from + tall, axis: from + tall / 2 };
    return { width, height, letter, scale, x, places, parts: own, interfaces, ...strip };
  });
  const aim = (scenes[0]?.places.datum ?? 0) - inMm(target);
  const plus = add === 0 ? "" : ` + ${wholeMm(add)}`;
  const facts: NonNullable<Figure["facts"]> = [
    ["reading", `${wholeMm(reading)} mm`],
    ...(add === 0 ? [] : [["with what the policy adds", `${wholeMm(target)} mm`] as const]),
    ["next shorter", `${wholeMm(shorter)} mm: ${wholeMm(target - shorter)} mm short`],
    ["next longer", `${wholeMm(longer)} mm: ${wholeMm(longer - target)} mm long`],
  ];
  const about = {
    title: `${parts.screw.called}: no screw made for reading ${wholeMm(reading)}`,
    description: `${facts.map(([what, value]) => `${what}: ${value}`).join("; ")}. The surgeon decides. Bone is not anatomy.`,
    width,
    height,
  };
  const figure = drawFigure(id, about, (pen) =>
    pen.group("dead-reading", { data: { scale } }, (group) => {
      for (const [index, scene] of scenes.entries())
        drawRow(group, scene, aim, [shorter, longer].map((one) => one - target)[index] ?? 0);
      const [first, last] = [scenes[0], scenes.at(-1)];
      if (first === undefined || last === undefined) return;
      const end = last.bottom + letter * 0.9;
      say(group, last, [width - 0.4, height - letter * 0.28], "not anatomy", {
        anchor: "end",
        weight: 400,
      });
      group.line([x(aim), letter * 1.1], [x(aim), end], { stroke: "line", dash: "centre" });
      say(
        group,
        first,
        [Math.max(0.4, x(aim) - letter * 1.5), letter * 0.86],
        `reading ${wholeMm(reading)}${plus}`,
      );
    }),
  );
  return { ...figure, facts };
};

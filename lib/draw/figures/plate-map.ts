import type { Figure, Pictures } from "../../model/figure.ts";
import type { LaidPlate } from "../../model/laid-plate.ts";
import { capHeight } from "../../model/type-sizes.ts";
import { drawFigure, type Pen } from "../canvas.ts";
import { grown } from "../layout/box.ts";
import type { PlacedLabel } from "../layout/label-candidate.ts";
import { barOf } from "../layout/label-leader.ts";
import { hooksKey, type LaidMap, layMap, scaleWords } from "../layout/lay-map.ts";
import { mapLetters } from "../layout/map-letters.ts";
import { mapFrame } from "../parts/map-frame.ts";
import { placedHole } from "../parts/placed-hole.ts";
import { plateBody, plateHooks } from "../parts/plate-shape.ts";
import { textWidth } from "../text-widths.ts";

const { size, ascent, height, ring, line, badge, pad } = mapLetters;

function widthsOf(plate: LaidPlate, marked: readonly string[]): Map<string, number> {
  const widths = plate.holes.map((hole): [string, number] => [
    hole.label,
    textWidth(hole.label, size, 600) + 2 * pad + (marked.includes(hole.label) ? badge + pad : 0),
  ]);
  const hooks = plate.hooks ? textWidth(hooksWords(plate.hooks.count), size, 400) + 2 * pad : 0;
  return new Map([...widths, [hooksKey, hooks]]);
}

const hooksWords = (count: number): string => (count === 1 ? "hook" : `${count} hooks`);

function label(pen: Pen, place: PlacedLabel, words: string, order: number): void {
  const { box, leader } = place;
  if (leader) {
    pen.line(...leader, { data: { leader: place.key } });
    pen.line(...barOf(leader, box), { stroke: "bold" });
  }
  const baseline = box.y0 + ascent;
  const named: Record<string, string> =
    place.key === hooksKey ? { word: hooksKey } : { label: place.key };
  pen.words([box.x1 - pad, baseline], words, {
    size,
    weight: place.key === hooksKey ? 400 : 600,
    anchor: "end",
    data: named,
  });
  if (order === 0) return;
  const [x, y] = [box.x0 + pad + badge / 2, baseline - (size * capHeight) / 2];
  pen.circle([x, y], badge / 2, { fill: "ink", stroke: "none" });
  const figures = order > 9 ? 3.1 : 3.7;
  pen.words([x, y + (figures * capHeight) / 2], String(order), {
    size: figures,
    weight: 700,
    anchor: "middle",
    colour: "metal",
  });
}

function describe(plate: LaidPlate, words: string): string {
  const side = plate.side === "none" ? "no side" : `${plate.side} side`;
  const holes = plate.holes.map((hole) => hole.label).join(", ");
  return `Seen from its upper face, ${side}, ${words}; the ${plate.proximal === "start" ? "left" : "right"} end lies towards the body. Holes: ${holes}.`;
}

function drawMap(
  pen: Pen,
  plate: LaidPlate,
  laid: LaidMap,
  paper: { width: number; height: number },
  marked: readonly string[],
): void {
  const { fitted } = laid;
  pen.group("map", { data: { scale: fitted.scale, plate: plate.id } }, (map) => {
    mapFrame(map, plate, fitted.scale, paper);
    plateHooks(map, plate, fitted);
    plateBody(map, plate, fitted);
    for (const hole of plate.holes) {
      const box = laid.boxes.get(hole.label);
      placedHole(
        map,
        hole,
        fitted,
        box && marked.includes(hole.label) ? grown(box, -line / 2) : undefined,
      );
    }
    for (const place of laid.labels) {
      const words = place.key === hooksKey ? hooksWords(plate.hooks?.count ?? 0) : place.key;
      label(map, place, words, marked.indexOf(place.key) + 1);
    }
    if (laid.lost.length > 0)
      map.words([0.5, paper.height - 7.5], `No room to name ${laid.lost.join(", ")}`, {
        size,
        weight: 600,
        data: { word: "lost" },
      });
  });
}

/** A plate from above in true proportion, as large as the size (mm) allows: every hole at its true place and named beside it,
 * the end towards the body, the side in words, and how large it is drawn. `marked` holes carry a bold ring and their order.
 * Higher than asked only when the labels have no room otherwise; a name that has none even so is said beneath, and its hole
 * stays unlabelled for the rules to find. */
export const plateMap: Pictures["plateMap"] = (id, plate, asked, marked = []): Figure => {
  const type = { height, line, ring, widths: widthsOf(plate, marked) };
  const { map, size: paper } = layMap(plate, asked, type, new Set(marked));
  const words = scaleWords(map.fitted.scale);
  const about = {
    title: `Plate map: ${plate.name}`,
    description: describe(plate, words),
    ...paper,
  };
  return drawFigure(id, about, (pen) => drawMap(pen, plate, map, paper, marked));
};

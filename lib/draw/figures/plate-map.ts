import type { Figure, Pictures, PlateSide } from "../../model/figure.ts";
import { labelSpan } from "../../model/label-span.ts";
import type { LaidPlate } from "../../model/laid-plate.ts";
import { plateName } from "../../model/plate-name.ts";
import { capHeight } from "../../model/type-sizes.ts";
import { drawFigure, type Pen } from "../canvas.ts";
import { bendZones } from "../layout/bend-zones.ts";
import { grown } from "../layout/box.ts";
import type { PlacedLabel } from "../layout/label-candidate.ts";
import { barOf } from "../layout/label-leader.ts";
import type { LaidMap } from "../layout/laid-map.ts";
import { layMap, scaleWords } from "../layout/lay-map.ts";
import { mapLetters } from "../layout/map-letters.ts";
import { hooksKey } from "../layout/map-wishes.ts";
import type { MapWords } from "../layout/map-words.ts";
import { plateNeck } from "../layout/plate-neck.ts";
import { bendZone } from "../parts/bend-zone.ts";
import { mapFrame } from "../parts/map-frame.ts";
import { mapSide, thicknessFacts } from "../parts/map-side.ts";
import { placedHole } from "../parts/placed-hole.ts";
import { plateBody, plateHooks } from "../parts/plate-shape.ts";
import { regionMark } from "../parts/region-mark.ts";
import { textWidth } from "../text-widths.ts";

const { size, note, ascent, height, ring, line, badge, pad } = mapLetters;

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

type Facts = NonNullable<Figure["facts"]>;

/** The names of a plate's regions with their screw holes, each fullest first; none for a plate of one region. */
function regionsOf(plate: LaidPlate): MapWords["regions"] {
  if (plateNeck(plate) === undefined) return [];
  return (["head", "shaft"] as const).map((region) => {
    const full = `${region} ${regionHoles(plate, region)}`.trim();
    const words = [...new Set([full, region])].map((text) => ({
      text,
      width: textWidth(text, note, 600),
    }));
    return { region, words };
  });
}

function regionHoles({ holes }: LaidPlate, region: "head" | "shaft"): string {
  const here = holes.filter((hole) => hole.region === region);
  const screwed = here.filter(({ kind }) => kind !== "wire" && kind !== "suture");
  return labelSpan((screwed.length > 0 ? screwed : here).map(({ label }) => label));
}

/** What a map says, as a table. */
function factsOf(plate: LaidPlate, { fitted }: LaidMap, side: PlateSide | undefined): Facts {
  const bends = bendZones(plate, side?.bends ?? []).map(({ between }) => between.join(" to "));
  const holes =
    plateNeck(plate) === undefined
      ? [["holes", plate.holes.map(({ label }) => label).join(", ")] as const]
      : (["head", "shaft"] as const).map((region) => {
          const here = plate.holes.filter((hole) => hole.region === region);
          return [`${region} holes`, here.map(({ label }) => label).join(", ")] as const;
        });
  return [
    ...holes,
    ...(side ? thicknessFacts(side) : []),
    ...(bends.length > 0 ? [["bend zones", bends.join(", ")] as const] : []),
    ["scale", scaleWords(fitted.scale)],
  ];
}

function describe(plate: LaidPlate, facts: Facts): string {
  const side = plate.side === "none" ? "no side" : `${plate.side} side`;
  const end = plate.proximal === "start" ? "left" : "right";
  const said = facts.map(([what, size]) => `${what}: ${size}`).join("; ");
  return `Seen from its upper face, ${side}; the ${end} end lies towards the body. ${capital(said)}.`;
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

function drawMap(
  pen: Pen,
  plate: LaidPlate,
  laid: LaidMap,
  paper: { width: number; height: number },
  { marked, side }: { readonly marked: readonly string[]; readonly side?: PlateSide | undefined },
): void {
  const { fitted } = laid;
  pen.group("map", { data: { scale: fitted.scale, plate: plate.id } }, (map) => {
    mapFrame(map, plate, fitted.scale, paper);
    plateHooks(map, plate, fitted);
    plateBody(map, plate, fitted);
    for (const { name, box } of laid.bends) bendZone(map, name, box, laid.edges);
    for (const hole of plate.holes) {
      const box = laid.boxes.get(hole.label);
      const ring = box && marked.includes(hole.label) ? grown(box, -line / 2) : undefined;
      placedHole(map, hole, fitted, ring);
    }
    for (const place of laid.labels) {
      const words = place.key === hooksKey ? hooksWords(plate.hooks?.count ?? 0) : place.key;
      label(map, place, words, marked.indexOf(place.key) + 1);
    }
    for (const region of laid.regions) regionMark(map, region);
    mapSide(map, plate, laid, side, paper.width);
    if (laid.lost.length > 0)
      map.words([0.5, paper.height - 7.5], `No room to name ${laid.lost.join(", ")}`, {
        size,
        weight: 600,
        data: { word: "lost" },
      });
  });
}

/** A plate from above in true proportion, as large as the size (mm) allows: every hole at its true place and named within 15 mm of its
 * middle, head and shaft named where it has both, the end towards the body, the side in words, and how large it is drawn. A name
 * stands outside the plate with a leader, or, where the plate's edge is farther than that, on the metal beside its hole, clear of edges,
 * other holes and bend zones. `marked` holes carry a bold ring and their order. With `side` it shows where the plate may be bent and,
 * where there is room below, the plate from the side with how thick it is. Higher than asked only when the labels have no room
 * otherwise, and never larger than
 * `most`; a name that has none even so is said beneath, and its hole stays unlabelled for the rules to find. */
export const plateMap: Pictures["plateMap"] = (id, plate, asked, shown = {}): Figure => {
  const { marked = [], side, most = Infinity } = shown;
  const widths = widthsOf(plate, marked);
  const words = { height, line, ring, widths, regions: regionsOf(plate), side, most };
  const { map, size: paper } = layMap(plate, asked, words, new Set(marked));
  const facts = factsOf(plate, map, side);
  const about = {
    title: `Plate map: ${plateName(plate)}`,
    description: describe(plate, facts),
    ...paper,
  };
  const figure = drawFigure(id, about, (pen) => drawMap(pen, plate, map, paper, { marked, side }));
  return { ...figure, facts, scale: map.fitted.scale, fromSide: map.side !== undefined };
};

import RBush from "rbush";
import { textWidth } from "../../lib/draw/text-widths.ts";
import type { LaidPlate } from "../../lib/model/laid-plate.ts";
import { holeItem, type Item, type Line, labelItems, meets } from "./label-faults.ts";
import type { ReadMap } from "./read-map.ts";

type Weight = 400 | 600 | 700;

/** The box of a word of the frame, a region or a thickness, as the typeface's ascent and descent say. */
function wordItem({ what, words, x, y, size, weight, anchor }: ReadMap["words"][number]): Item {
  const width = textWidth(words, size, weight as Weight);
  const minX = anchor === "end" ? x - width : anchor === "middle" ? x - width / 2 : x;
  const box = { minX, maxX: minX + width, minY: y - size * 0.984, maxY: y + size * 0.316 };
  return { what: `"${words}" (${what})`, ...box };
}

const lineItem = (what: string, [x1, y1, x2, y2]: Line): Item => ({
  what,
  minX: Math.min(x1, x2),
  maxX: Math.max(x1, x2),
  minY: Math.min(y1, y2),
  maxY: Math.max(y1, y2),
});

const around = (what: string, points: readonly (readonly [number, number])[]): Item => ({
  what,
  minX: Math.min(...points.map(([x]) => x)),
  maxX: Math.max(...points.map(([x]) => x)),
  minY: Math.min(...points.map(([, y]) => y)),
  maxY: Math.max(...points.map(([, y]) => y)),
});

/** The plate's edge on the figure: its corners, and 24 points a curve by the definition of a cubic. */
function edgeOf(plate: LaidPlate, map: ReadMap): Line[] {
  const [hole] = map.holes;
  if (hole === undefined) throw new Error("No hole is drawn");
  const place = ([x, y]: readonly [number, number]): readonly [number, number] => [
    hole.x + ((x - hole.dataX) * map.scale) / 1000,
    hole.y + ((y - hole.dataY) * map.scale) / 1000,
  ];
  const spots = [place(plate.outline.start)];
  let from = plate.outline.start;
  for (const segment of plate.outline.segments) {
    if ("line" in segment) spots.push(place(segment.line));
    else {
      const [a, b, to] = segment.curve;
      for (let step = 1; step <= 24; step++) {
        const t = step / 24;
        const at = (axis: 0 | 1): number => {
          const mix = (p: number, q: number): number => p + (q - p) * t;
          const [p, q, r] = [
            mix(from[axis], a[axis]),
            mix(a[axis], b[axis]),
            mix(b[axis], to[axis]),
          ];
          return mix(mix(p, q), mix(q, r));
        };
        spots.push(place([at(0), at(1)]));
      }
    }
    from = "line" in segment ? segment.line : segment.curve[2];
  }
  return spots.map(([x, y], at) => {
    const [x2, y2] = spots[(at + 1) % spots.length] ?? [x, y];
    return [x, y, x2, y2];
  });
}

const shrunk = (item: Item, by: number): Item => ({
  what: item.what,
  minX: item.minX + by,
  maxX: item.maxX - by,
  minY: item.minY + by,
  maxY: item.maxY - by,
});

/** Everything wrong with what a map shows besides its labels: regions that are not named, words and lines that meet one another,
 * a label, a hole, a leader, the plate's edge or the view from the side, or that leave the figure; labels across the plate's edge or in a
 * zone that may be bent. Leaders cross such a zone only on plates of ten holes and more with names
 * wider than 10 mm. Judged from the drawing alone. */
export function mapFaults(plate: LaidPlate, map: ReadMap): string[] {
  const faults: string[] = [];
  const regions = new Set(plate.holes.map(({ region }) => region));
  const named = map.words.filter(({ what }) => what === "region").map(({ words }) => words);
  for (const region of regions.size > 1 ? regions : [])
    if (named.filter((words) => words.startsWith(region)).length !== 1)
      faults.push(`${region} is named ${named.join(", ") || "nowhere"}`);
  const words = map.words.map(wordItem);
  const labels = labelItems(map);
  const holes = plate.holes.map(({ label }) => ({
    ...holeItem(plate, map, label),
    what: `hole ${label}`,
  }));
  const body = map.side === undefined ? [] : [around("the side", map.side.points)];
  const tree = new RBush<Item>();
  tree.load([...words, ...labels, ...holes, ...body]);
  for (const [at, box] of words.entries()) {
    const { y, size } = map.words[at] ?? { y: 0, size: 0 };
    const inked = y - size * 0.72 >= 0 && y + size * 0.22 <= map.height;
    if (!inked || box.minX < 0 || box.maxX > map.width)
      faults.push(`${box.what} leaves the figure`);
    for (const hit of tree.search(box))
      if (hit !== box) faults.push(`${box.what} meets ${hit.what}`);
  }
  for (const box of body)
    for (const hit of tree.search(box))
      if (hit !== box && !words.includes(hit)) faults.push(`the side meets ${hit.what}`);
  const edge = edgeOf(plate, map);
  for (const box of [...words, ...labels])
    if (edge.some((piece) => meets(piece, shrunk(box, 0.1))))
      faults.push(`${box.what} lies across the plate's edge`);
  for (const { region, line } of map.spans) {
    for (const box of [...words, ...labels, ...holes, ...body])
      if (meets(line, shrunk(box, 0.05))) faults.push(`the line of ${region} meets ${box.what}`);
    for (const leader of map.leaders)
      if (meets(leader.line, lineItem("", line)))
        faults.push(`the line of ${region} meets the leader of ${leader.label}`);
    for (const piece of edge)
      if (meets(piece, lineItem("", line)))
        faults.push(`the line of ${region} meets the plate's edge`);
  }
  const crowded =
    plate.holes.length >= 10 && plate.holes.some(({ label }) => textWidth(label, 4.8, 600) > 10);
  return [...faults, ...bendFaults(map, [...labels, ...holes], crowded)];
}

/** What stands in a zone that may be bent: both thick edges of one zone make its box. */
function bendFaults(
  { bends, leaders }: ReadMap,
  others: readonly Item[],
  crowded: boolean,
): string[] {
  return [...new Set(bends.map(({ name }) => name))].flatMap((name) => {
    const zone = around(
      name,
      bends.filter((one) => one.name === name).flatMap(({ points }) => points),
    );
    return [
      ...others
        .filter(
          (box) =>
            box.minX < zone.maxX &&
            box.maxX > zone.minX &&
            box.minY < zone.maxY &&
            box.maxY > zone.minY,
        )
        .map(({ what }) => `${what} lies in bend zone ${name}`),
      ...leaders
        .filter(({ line }) => !crowded && meets(line, zone))
        .map(({ label }) => `the leader of ${label} crosses bend zone ${name}`),
    ];
  });
}

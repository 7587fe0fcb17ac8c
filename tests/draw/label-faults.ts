import RBush from "rbush";
import { textWidth } from "../../lib/draw/text-widths.ts";
import type { LaidPlate } from "../../lib/model/laid-plate.ts";
import type { ReadMap } from "./read-map.ts";

export type Item = { minX: number; minY: number; maxX: number; maxY: number; what: string };
export type Line = readonly [number, number, number, number];

/** On which side of a line a point lies: the sign tells. */
function side(line: Line, x: number, y: number): number {
  return (line[2] - line[0]) * (y - line[1]) - (line[3] - line[1]) * (x - line[0]);
}

/** Whether the stretches of two lines along one axis lie apart. */
function apart(a: Line, b: Line, axis: 0 | 1): boolean {
  const far = axis === 0 ? 2 : 3;
  return (
    Math.min(a[axis], a[far]) > Math.max(b[axis], b[far]) ||
    Math.min(b[axis], b[far]) > Math.max(a[axis], a[far])
  );
}

/** Whether two lines share a point: their boxes do, and neither has both ends of the other strictly on one side. */
function cross(a: Line, b: Line): boolean {
  if (apart(a, b, 0) || apart(a, b, 1)) return false;
  return (
    side(a, b[0], b[1]) * side(a, b[2], b[3]) <= 0 && side(b, a[0], a[1]) * side(b, a[2], a[3]) <= 0
  );
}

function within({ minX, minY, maxX, maxY }: Item, x: number, y: number): boolean {
  return x > minX && x < maxX && y > minY && y < maxY;
}

/** Whether a line has a point in a box or on its edge. */
export function meets(line: Line, box: Item): boolean {
  const { minX, minY, maxX, maxY } = box;
  const sides: Line[] = [
    [minX, minY, maxX, minY],
    [maxX, minY, maxX, maxY],
    [maxX, maxY, minX, maxY],
    [minX, maxY, minX, minY],
  ];
  return within(box, line[0], line[1]) || sides.some((edge) => cross(line, edge));
}

/** Box of one hole from the plate's data, the map's scale and the place read from the drawing. */
export function holeItem(plate: LaidPlate, map: ReadMap, label: string): Item {
  const hole = plate.holes.find((one) => one.label === label);
  const drawn = map.holes.find((one) => one.label === label);
  if (!hole || !drawn) throw new Error(`Hole ${label} is not drawn`);
  const boxes = hole.zones.map((zone) => {
    const through = zone.through ?? 4000;
    const seat = zone.seat ?? through;
    const along = zone.slot ? seat + zone.slot - through : seat;
    const [dx, dy] = [(zone.at[0] - hole.at[0]) / 1000, (zone.at[1] - hole.at[1]) / 1000];
    return {
      minX: dx - along / 2000,
      maxX: dx + along / 2000,
      minY: dy - seat / 2000,
      maxY: dy + seat / 2000,
    };
  });
  const pick = (way: "min" | "max", key: keyof (typeof boxes)[number]): number =>
    Math[way](...boxes.map((box) => box[key])) * map.scale;
  return {
    what: label,
    minX: drawn.x + pick("min", "minX"),
    maxX: drawn.x + pick("max", "maxX"),
    minY: drawn.y + pick("min", "minY"),
    maxY: drawn.y + pick("max", "maxY"),
  };
}

/** The rims of a hole's zones as closed runs of 48 points each. */
function rims(plate: LaidPlate, map: ReadMap, label: string): Line[] {
  const hole = plate.holes.find((one) => one.label === label);
  const drawn = map.holes.find((one) => one.label === label);
  if (!hole || !drawn) throw new Error(`Hole ${label} is not drawn`);
  return hole.zones.flatMap((zone) => {
    const through = zone.through ?? 4000;
    const radius = (zone.seat ?? through) / 2;
    const core = zone.slot ? (zone.slot - through) / 2 : 0;
    const spots = Array.from({ length: 49 }, (_, at) => {
      const angle = (2 * Math.PI * at) / 48;
      const x =
        radius * Math.cos(angle) + core * Math.sign(Math.cos(angle)) + zone.at[0] - hole.at[0];
      return [
        drawn.x + (x * map.scale) / 1000,
        drawn.y + ((radius * Math.sin(angle) + zone.at[1] - hole.at[1]) * map.scale) / 1000,
      ] as const;
    });
    return spots
      .slice(1)
      .map(([x, y], at): Line => [spots[at]?.[0] ?? x, spots[at]?.[1] ?? y, x, y]);
  });
}

/** The boxes of labels, as the typeface's ascent and descent say. */
export function labelItems({ labels }: ReadMap): Item[] {
  return labels.map(({ label, x, y, size }) => ({
    what: label,
    minX: x - textWidth(label, size, 600),
    maxX: x,
    minY: y - size * 0.984,
    maxY: y + size * 0.316,
  }));
}

/** Everything wrong with the labels of a map, judged from the drawing alone; empty when all is well. Lines of text are boxed
 * as the typeface's ascent and descent say. */
export function labelFaults(plate: LaidPlate, map: ReadMap): string[] {
  const faults: string[] = [];
  const wanted = plate.holes
    .map((hole) => hole.label)
    .sort()
    .join(" ");
  const got = map.labels
    .map(({ label, words }) => (label === words ? label : `${label}≠${words}`))
    .sort()
    .join(" ");
  if (got !== wanted) faults.push(`labels ${got}, wanted ${wanted}`);
  const labels = labelItems(map);
  const holes = plate.holes.map((hole) => holeItem(plate, map, hole.label));
  const tree = new RBush<Item>();
  tree.load([...labels, ...holes]);
  for (const [at, { size, label }] of map.labels.entries()) {
    if (size * 0.668 < 3.2) faults.push(`${label} is set in ${size} mm`);
    const box = labels[at] as Item;
    if (box.minX < 0 || box.minY < 0 || box.maxX > map.width || box.maxY > map.height)
      faults.push(`${label} leaves the figure`);
    for (const hit of tree.search(box)) if (hit !== box) faults.push(`${label} meets ${hit.what}`);
    const hole = map.holes.find((one) => one.label === label);
    const [dx, dy] = [
      Math.max(box.minX - (hole?.x ?? 1e9), 0, (hole?.x ?? -1e9) - box.maxX),
      Math.max(box.minY - (hole?.y ?? 1e9), 0, (hole?.y ?? -1e9) - box.maxY),
    ];
    if (Math.hypot(dx, dy) > 15)
      faults.push(`${label} is ${Math.hypot(dx, dy).toFixed(1)} mm from its hole`);
  }
  const edges = plate.holes.map(({ label }) => ({ label, rim: rims(plate, map, label) }));
  for (const [at, { label, line }] of map.leaders.entries()) {
    for (const other of map.leaders.slice(at + 1))
      if (cross(line, other.line)) faults.push(`leaders of ${label} and ${other.label} cross`);
    for (const box of labels)
      if (box.what !== label && meets(line, box))
        faults.push(`leader of ${label} meets label ${box.what}`);
    for (const { label: other, rim } of edges)
      if (other !== label && rim.some((piece) => cross(line, piece)))
        faults.push(`leader of ${label} meets hole ${other}`);
  }
  return faults;
}

import type { LaidHole, LaidPlate, LaidZone, Point } from "../../model/laid-plate.ts";
import { mm, type Um } from "../../model/measure.ts";
import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";

/** The least metal between a hole and the plate's edge, or another hole, micrometres. */
const wall: Um = 300;
const steps = 24;

/** How far a zone reaches along and across the plate from its centre, micrometres. */
const reach = ({ through = 0, slot = through }: LaidZone): Point => [
  Math.max(slot, through) / 2,
  through / 2,
];

/** The outline as points, close enough together that no curve strays a tenth of a millimetre. */
function polygon({ outline }: LaidPlate): readonly Point[] {
  let from = outline.start;
  return outline.segments.flatMap((segment): readonly Point[] => {
    const start = from;
    if ("line" in segment) {
      from = segment.line;
      return [start];
    }
    const [a, b, end] = segment.curve;
    from = end;
    const at = (axis: 0 | 1, t: number): number =>
      (1 - t) ** 3 * start[axis] +
      3 * (1 - t) ** 2 * t * a[axis] +
      3 * (1 - t) * t * t * b[axis] +
      t ** 3 * end[axis];
    return Array.from({ length: steps }, (_, index): Point => {
      const t = index / steps;
      return [at(0, t), at(1, t)];
    });
  });
}

function isInside([x, y]: Point, corners: readonly Point[]): boolean {
  let inside = false;
  let before = corners.at(-1) ?? [x, y];
  for (const corner of corners) {
    if (before[1] > y !== corner[1] > y) {
      const [[x1, y1], [x2, y2]] = [before, corner];
      if (x < ((x2 - x1) * (y - y1)) / (y2 - y1) + x1) inside = !inside;
    }
    before = corner;
  }
  return inside;
}

/** Eight points around a zone, the wall beyond its rim. */
function rim(zone: LaidZone): readonly Point[] {
  const [along, across] = reach(zone);
  return Array.from({ length: 8 }, (_, index): Point => {
    const angle = (index * Math.PI) / 4;
    return [
      zone.at[0] + Math.cos(angle) * (along + wall),
      zone.at[1] + Math.sin(angle) * (across + wall),
    ];
  });
}

const meet = (a: LaidZone, b: LaidZone): boolean => {
  const [left, right] = [reach(a), reach(b)];
  const [x, y] = [a.at[0] - b.at[0], a.at[1] - b.at[1]].map(Math.abs);
  const clear = (left[1] + right[1] + left[0] + right[0]) / 2 + wall;
  return Math.hypot(x ?? 0, y ?? 0) < Math.min(clear, left[1] + right[1] + wall);
};

/** What is wrong with each hole of a laid plate. */
function* faults(plate: LaidPlate): Generator<readonly [LaidHole, string]> {
  const edge = polygon(plate);
  const shaft = plate.holes.filter(({ region }) => region === "shaft").map(({ at }) => at[0]);
  const [first, last] = [Math.min(...shaft), Math.max(...shaft)];
  for (const [index, hole] of plate.holes.entries()) {
    if (hole.zones.some((zone) => rim(zone).some((point) => !isInside(point, edge))))
      yield [hole, `inside the outline with ${mm(wall)} to spare`];
    const other = plate.holes
      .slice(0, index)
      .find(({ zones }) => zones.some((a) => hole.zones.some((b) => meet(a, b))));
    if (other) yield [hole, `clear of hole ${other.label}`];
    if (hole.region === "head" && hole.at[0] > first && hole.at[0] < last)
      yield [hole, "beyond the row, as a hole of the head"];
  }
}

/** Every hole lies inside its plate, clear of the edge, of other holes and of the other region. */
export const holesLieInThePlate: Rule = {
  id: "holes-lie-in-the-plate",
  severity: "stop",
  about: "plate",
  summary:
    "Every hole lies inside its plate's outline, apart from every other hole, and holes of the head beyond the row.",
  why: "A slipped coordinate puts a hole where the plate has none, and the map points there.",
  fix: "Compare the hole's place with the drawing.",
  source: "common practice",
  *check({ catalogue, derived }) {
    for (const plate of derived.plates) {
      const facts = catalogue.plates.get(plate.plate);
      if (!facts || "mirror_of" in facts) continue;
      for (const [{ label }, where] of faults(plate)) {
        const index = facts.holes.findIndex((hole) => hole.label === label);
        yield {
          file: facts.file,
          path: index < 0 ? ["row"] : ["holes", index, "at"],
          message: `Expected hole ${label} ${where}, in ${plate.name} with ${plate.holesInRow} holes`,
        };
      }
    }
  },
  examples: [
    passes("inside and apart", "Two holes in the head, a row behind them."),
    passes("0.3 from the edge", "Hole 3.2 wide, centre 1.9 from the edge.", {
      "plate/lower-fibula-left holes.0.at": [1.9, -3],
    }),
    fails("closer to the edge", "Hole 3.2 wide, centre 1.899 from the edge.", {
      "plate/lower-fibula-left holes.0.at": [1.899, -3],
    }),
    fails("outside", "300 along a plate of 54.", {
      "plate/lower-fibula-left holes.0.at": [300, -3],
    }),
    fails("in another hole", "Both at 9, 2.", { "plate/lower-fibula-left holes.0.at": [9, 2] }),
    fails("a hole of the head among the row", "Head hole at 40, the row from 20 on.", {
      "plate/lower-fibula-left holes.0.at": [40, -3.1],
    }),
  ],
};

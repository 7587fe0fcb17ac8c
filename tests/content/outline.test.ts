import { describe, expect, it } from "vitest";
import { derive } from "../../lib/derive/derive.ts";
import { loadLibrary } from "../../lib/index.ts";
import type { LaidPlate, LaidZone, Point } from "../../lib/model/laid-plate.ts";

const { catalogue } = loadLibrary("content");
if (catalogue === undefined) throw new Error("The demo library does not resolve");
const plates = derive(catalogue).plates;
const zones = catalogue.zones;

/** Metal that must stand around every opening, micrometres; half a micrometre of it is sampling. */
const margin = 1499.5;

function edge({ outline }: LaidPlate): Point[] {
  const points: Point[] = [];
  let from = outline.start;
  for (const segment of outline.segments) {
    const [a, b, to] = "line" in segment ? [from, segment.line, segment.line] : segment.curve;
    for (let step = 0; step <= 200; step++) {
      const t = step / 200;
      const part = (axis: 0 | 1) =>
        (1 - t) ** 3 * from[axis] +
        3 * t * (1 - t) ** 2 * a[axis] +
        3 * t * t * (1 - t) * b[axis] +
        t ** 3 * to[axis];
      points.push([part(0), part(1)]);
    }
    from = to;
  }
  return points;
}

/** Half length along x between the round ends, and their radius: what the opening takes from the metal. */
function cut({ zone }: LaidZone): { half: number; radius: number } {
  const facts = zones.get(zone);
  if (facts === undefined) throw new Error(`No zone ${zone}`);
  if (facts.kind === "threaded") return { half: 0, radius: facts.through / 2 + 600 };
  if (facts.kind === "plain-round") return { half: 0, radius: facts.seat / 2 };
  if (facts.kind === "plain-oblong")
    return { half: (facts.slot - facts.through) / 2, radius: facts.seat / 2 };
  return { half: 0, radius: facts.through / 2 };
}

function distance([x, y]: Point, zone: LaidZone): number {
  const { half, radius } = cut(zone);
  const along = Math.max(0, Math.abs(x - zone.at[0]) - half);
  return Math.hypot(along, y - zone.at[1]) - radius;
}

describe("every plate of the demo library, in every side and length", () => {
  it.each(plates.map((plate) => [plate.id, plate] as const))(
    "%s keeps metal around each opening",
    (_, plate) => {
      const points = edge(plate);
      const thin = plate.holes.flatMap(({ label, zones: parts }) =>
        parts
          .map((part) => ({
            label,
            metal: Math.min(...points.map((point) => distance(point, part))),
          }))
          .filter(({ metal }) => metal < margin),
      );
      expect(thin).toEqual([]);
    },
  );

  it.each(plates.map((plate) => [plate.id, plate] as const))(
    "%s is as long as its outline",
    (_, plate) => {
      expect(plate.length).toBe(plate.statedLength);
    },
  );
});

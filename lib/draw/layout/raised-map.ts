import type { Point } from "../../model/laid-plate.ts";
import type { Box, Spot } from "./box.ts";
import type { LaidMap } from "./laid-map.ts";
import type { Stretch } from "./stretch.ts";

/** A laid map without its view from the side, all of it higher by so many millimetres, lower where they are negative. */
export function raisedMap(map: LaidMap, by: number): LaidMap {
  const spot = ([x, y]: Spot): Spot => [x, y - by];
  const stretch = ([from, to]: Stretch): Stretch => [spot(from), spot(to)];
  const box = (one: Box): Box => ({ ...one, y0: one.y0 - by, y1: one.y1 - by });
  const { fitted, edges } = map;
  return {
    ...map,
    fitted: {
      ...fitted,
      box: box(fitted.box),
      project: (point: Point): Spot => spot(fitted.project(point)),
    },
    boxes: new Map([...map.boxes].map(([label, one]) => [label, box(one)])),
    ...(map.hooks && { hooks: box(map.hooks) }),
    labels: map.labels.map((label) => ({
      ...label,
      box: box(label.box),
      ...(label.leader && { leader: stretch(label.leader) }),
    })),
    regions: map.regions.map((mark) => ({
      ...mark,
      words: box(mark.words),
      lines: mark.lines.map(stretch),
    })),
    bends: map.bends.map((bend) => ({ ...bend, box: box(bend.box) })),
    edges: (side, from, to) =>
      side === "above" || side === "below"
        ? edges(side, from, to) - by
        : edges(side, from + by, to + by),
  };
}

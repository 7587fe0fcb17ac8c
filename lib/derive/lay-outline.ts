import type { LaidPlate, OutlineSegment } from "../model/laid-plate.ts";
import type { DrawnPlate } from "../model/plate.ts";
import type { PlateFrame } from "./plate-frame.ts";

/** A plate's outline in plate coordinates, closed: its last segment arrives at its start. */
export function layOutline({ outline }: DrawnPlate, frame: PlateFrame): LaidPlate["outline"] {
  const [first, ...rest] = outline;
  if (first === undefined) throw new Error("An outline has at least three nodes");
  let before = first;
  const segments = [...rest, first].map((node): OutlineSegment => {
    const left = before;
    before = node;
    const to = frame(node.from, node.at);
    return node.curve
      ? { curve: [frame(left.from, node.curve[0]), frame(node.from, node.curve[1]), to] }
      : { line: to };
  });
  return { start: frame(first.from, first.at), segments };
}

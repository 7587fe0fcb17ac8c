import type { LaidPlate } from "../../model/laid-plate.ts";
import { type Box, boxAround, gapBetween, grown, middle } from "./box.ts";
import { type FittedPlate, holeBox } from "./fit-plate.ts";
import { hooksBox } from "./hooks-box.ts";
import type { LabelWish } from "./label-candidate.ts";
import type { MapWords } from "./map-words.ts";

/** Key of the hooks' word among the labels. */
export const hooksKey = "hooks";

const [leastRing, ringGap] = [0.55, 0.15];

/** How far a ring stands off its hole: `most`, or half the way to the nearest other hole, so that two rings never meet. */
function ringMargin(hole: Box, others: readonly Box[], most: number): number {
  const gap = Math.min(...others.map((other) => gapBetween(hole, other)));
  return Math.max(leastRing, Math.min(most, gap / 2 - ringGap));
}

/** What of a plate wants a label: its holes, marked ones with their rings, and its hooks. */
export function wishesOf(
  plate: LaidPlate,
  fitted: FittedPlate,
  words: MapWords,
  marked: ReadonlySet<string>,
): {
  readonly wishes: readonly LabelWish[];
  readonly boxes: ReadonlyMap<string, Box>;
  readonly hooks?: Box;
} {
  const bare = plate.holes.map((hole) => holeBox(hole, fitted, words.line));
  const boxes = new Map(
    plate.holes.map(({ label }, index) => {
      const own = bare[index] ?? fitted.box;
      if (!marked.has(label)) return [label, own];
      const others = bare.filter((_, other) => other !== index);
      return [label, grown(own, ringMargin(own, others, words.ring))];
    }),
  );
  const wishes = plate.holes.map(({ label, at }): LabelWish => {
    const spot = fitted.project(at);
    return {
      key: label,
      at: spot,
      target: boxes.get(label) ?? boxAround(spot, 0, 0),
      width: words.widths.get(label) ?? 0,
      isHole: true,
      row: label.replace(/[0-9]+$/, ""),
    };
  });
  const hooks = hooksBox(plate, fitted);
  if (!hooks) return { wishes, boxes };
  const width = words.widths.get(hooksKey) ?? 0;
  const hooked = { key: hooksKey, at: middle(hooks), target: hooks, width, isHole: false };
  return { wishes: [...wishes, hooked], boxes, hooks };
}

import type { LaidPlate } from "../../model/laid-plate.ts";
import type { DrawnPlate } from "../../model/plate.ts";
import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";

/** How wide the outline is over the half of the plate nearer one end, micrometres. */
function widthAt({ outline, bounds }: LaidPlate, end: "start" | "end"): number {
  const middle = (bounds.min[0] + bounds.max[0]) / 2;
  const nodes = [
    outline.start,
    ...outline.segments.map((segment) => ("line" in segment ? segment.line : segment.curve[2])),
  ];
  const own = nodes.filter(([x]) => (end === "start" ? x <= middle : x >= middle));
  return Math.max(...own.map(([, y]) => y)) - Math.min(...own.map(([, y]) => y));
}

/** The points of an outline, ends told apart, each turned over or round as asked and written alike. */
function points({ outline }: DrawnPlate, over: 1 | -1, round: boolean): string {
  return outline
    .map(({ from, at: [x, y] }) => {
      const other = from === "start" ? "end" : "start";
      return round ? `${other} ${0 - x} ${over * y + 0}` : `${from} ${x} ${over * y + 0}`;
    })
    .sort()
    .join();
}

function misfit(facts: DrawnPlate, laid: LaidPlate): string | undefined {
  const { end_cue: cue, side, proximal, hooks, row, tail } = facts;
  const [own, other] = [
    widthAt(laid, proximal),
    widthAt(laid, proximal === "start" ? "end" : "start"),
  ];
  if (side === "none" && points(facts, 1, false) !== points(facts, -1, false))
    return "an outline the same on both sides, as the plate has no side";
  if (/symmetrical/.test(cue) && points(facts, 1, false) !== points(facts, 1, true))
    return "an outline the same from both ends, as its end cue says";
  if (/symmetrical/.test(cue) && (proximal !== "start" || row.first[0] !== tail))
    return "a symmetrical plate to begin at its start, as far from the first hole as it ends from the last";
  if (/narrow/.test(cue) && own >= other)
    return "the narrow end towards the body, as its end cue says";
  if (/broad|wide/.test(cue) && own <= other)
    return "the broad end towards the body, as its end cue says";
  if (/without hooks/.test(cue) && hooks?.at === proximal)
    return "the hooks at the other end than the body, as its end cue says";
  return row.region === "shaft" ? undefined : "the row in the shaft, which grows with the length";
}

/** What a plate says of its side and its ends is what its outline shows. */
export const outlineAgreesWithItsWords: Rule = {
  id: "outline-agrees-with-its-words",
  severity: "stop",
  about: "plate",
  summary:
    "A plate without side is the same on both sides; its narrow, broad or hooked end lies where its end cue says.",
  why: "The end that lies towards the body is told in words and drawn from the outline; both are used to lay the plate the right way round.",
  fix: "Correct the outline, the end cue or the end that lies towards the body.",
  source: "common practice",
  *check({ catalogue, derived }) {
    for (const laid of derived.plates) {
      const facts = catalogue.plates.get(laid.plate);
      if (!facts || "mirror_of" in facts || facts.variants[0]?.holes !== laid.holesInRow) continue;
      const message = misfit(facts, laid);
      if (message !== undefined)
        yield {
          file: facts.file,
          path: ["proximal"],
          message: `Expected ${message} (${laid.name})`,
        };
    }
  },
  examples: [
    passes("a narrow end", "12 wide at the start, 10 at the end towards the body."),
    fails("the broad end called narrow", "The start lies towards the body.", {
      "plate/lower-fibula-left proximal": "start",
    }),
    fails("no side, two shapes", "One corner at −5.5, the other at 6.", {
      "plate/lower-fibula-left side": "none",
      "plate/lower-fibula-left outline.0.at": [0, -5.5],
    }),
  ],
};

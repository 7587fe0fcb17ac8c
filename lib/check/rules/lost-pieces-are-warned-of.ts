import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";

const mishap = {
  "mishap/broken": {
    name: "The drill breaks",
    order: 1,
    acts: ["Stop."],
    source: { document: "pebblefin-ifu", section: "Table 1" },
  },
};
const pieces = {
  "caution/pieces": {
    signal: "CAUTION",
    text: "Count and keep the pieces.",
    why: "A piece left behind has to be known.",
    against: "lost-piece",
    source: { document: "pebblefin-ifu", section: "Table 1" },
  },
};

/** The sheet for what does not go to plan warns of lost pieces. */
export const lostPiecesAreWarnedOf: Rule = {
  id: "lost-pieces-are-warned-of",
  severity: "stop",
  about: "technique",
  summary:
    "A library that tells what to do when something breaks has a caution against lost pieces.",
  why: "Most fragments that stay in a patient are pieces of drills that nobody missed at the count.",
  fix: "Write a caution with against: lost-piece; the sheet for what does not go to plan prints it.",
  source: "Patient Safety 2024, 10.33940/001c.124086 (retained drill fragments)",
  needsAll: ["caution"],
  *check({ catalogue }) {
    const [first] = catalogue.mishaps.values();
    const warned = [...catalogue.cautions.values()].some(({ against }) => against === "lost-piece");
    if (first && !warned)
      yield { file: first.file, path: [], message: "Missing a caution against lost pieces" };
  },
  examples: [
    passes("warned of", "A drill breaks; the pieces are counted.", { ...mishap, ...pieces }),
    passes("nothing told", "The library tells nothing of what does not go to plan."),
    fails("not warned of", "A drill breaks, and no caution speaks of its pieces.", mishap),
  ],
};

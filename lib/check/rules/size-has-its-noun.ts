import type { Rule } from "../../model/rule.ts";
import { spokenTexts } from "../written-texts.ts";

const noun =
  "(?:drills?|screws?|sleeves?|guides?|taps?|inserts?|gauges?|limiters?|wires?|drivers?|countersinks?|handles?|bores?|holes?|parts?|oblongs?|openings?|plates?|heads?|threads?|shafts?|pins?)";
const kind = "(?:locking|cortical|cancellous|plain-head|plain|threaded|pilot|gliding|oblong)";
const size = "\\d+\\.\\d+";
const before = new RegExp(
  `\\b${noun}(?:\\s+${kind})?\\s+(?:${size}\\s*(?:,|/|and|or|to)\\s*(?:${noun}\\s+)?)*$`,
  "i",
);
const after = new RegExp(`^(?:\\s+${kind})*\\s+${noun}\\b`, "i");
const unit = /^\s*(?:mm|N·m|°|degrees?|kg|cm|%)(?![a-z])/i;

function bareSize(text: string): string | undefined {
  const sizes = [...text.matchAll(/(?<![\d.])\d+\.\d+(?![\d.]*\d)/g)];
  return sizes.find(({ 0: number, index }) => {
    const rest = text.slice(index + number.length);
    return !before.test(text.slice(0, index)) && !after.test(rest) && !unit.test(rest);
  })?.[0];
}

/** A size never stands without saying what it is the size of. */
export const sizeHasItsNoun: Rule = {
  id: "size-has-its-noun",
  severity: "stop",
  about: "words",
  summary:
    "In every text a size stands with its noun (drill 2.7, screw 3.5 locking) or with its unit.",
  why: "Two point seven is a screw, a gliding drill and a pilot drill. Called out alone, it is handed over wrong.",
  fix: "Say what it is: drill 2.7, or screw 2.7.",
  source: "common practice",
  *check({ catalogue }) {
    for (const { file, path, text } of spokenTexts(catalogue)) {
      const bare = bareSize(text);
      if (bare !== undefined)
        yield {
          file,
          path,
          message: `Expected a noun beside ${bare} ("drill ${bare}" or "screw ${bare}"), got "${text}"`,
        };
    }
  },
  examples: [
    ...[
      "Take drill 2.7.",
      "Take drills 2.5 and 2.7.",
      "Hand the screw 3.5 locking.",
      "Hand the 3.5 locking screw.",
      "Tighten to 1.6 N·m.",
      "Drill 2.7 passes the sleeve made for drill 2.8.",
      "Take out the two wires.",
    ].map((text) => ({
      title: `"${text}"`,
      passes: true,
      shows: text,
      edits: [{ file: "recipe/cortical-neutral", path: ["steps", 0, "say"], value: text }],
    })),
    ...[
      "Use 2.7.",
      "Take the 2.7 now.",
      "Drill 2.7, then 3.5 for the rest.",
      "Hand the long 3.5.",
    ].map((text) => ({
      title: `"${text}"`,
      passes: false,
      shows: text,
      edits: [{ file: "recipe/cortical-neutral", path: ["steps", 0, "say"], value: text }],
    })),
  ],
};

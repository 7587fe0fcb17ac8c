import { rackLengths } from "../../model/rack-lengths.ts";
import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";

/** The length at which a screw is drawn is one that is made. */
export const drawnLengthIsInTheRack: Rule = {
  id: "drawn-length-is-in-the-rack",
  severity: "stop",
  about: "screw",
  summary: "The example length of a screw counts one of its rack lengths, from 0.",
  why: "The drawing is at true size and is held against the screw: it must show a screw that exists.",
  fix: "Correct example_length_index, or the runs of lengths.",
  source: "common practice",
  *check({ catalogue }) {
    for (const {
      file,
      called,
      example_length_index: index,
      lengths,
    } of catalogue.screws.values()) {
      const made = rackLengths({ lengths }).length;
      if (index !== undefined && index >= made)
        yield {
          file,
          path: ["example_length_index"],
          message: `Expected one of the ${made} lengths of ${called}, counted from 0 to ${made - 1}, got ${index}`,
        };
    }
  },
  examples: [
    passes("the last length", "25 lengths; the 25th is drawn, index 24.", {
      "screw/cortical-35 example_length_index": 24,
    }),
    fails("a length past the last", "25 lengths; index 25 is asked for.", {
      "screw/cortical-35 example_length_index": 25,
    }),
  ],
};

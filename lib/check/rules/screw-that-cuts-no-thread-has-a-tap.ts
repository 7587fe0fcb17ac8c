import { mm } from "../../model/measure.ts";
import type { Rule } from "../../model/rule.ts";
import { meant } from "../meant.ts";
import { works } from "../work.ts";

/** A screw that does not cut its own thread has a tap of its size and pitch, and its technique a step for it. */
export const screwThatCutsNoThreadHasATap: Rule = {
  id: "screw-that-cuts-no-thread-has-a-tap",
  severity: "stop",
  about: "chain",
  summary:
    "A screw that is not self-tapping has a tap of the same outer diameter and pitch, and its technique has a step for it.",
  why: "Without a cut thread such a screw jams or shears in hard bone.",
  fix: "Add the tap, correct its diameter or pitch, or state that the screw is self-tapping.",
  source: "common practice; Open J Orthop 2015, doi 10.4236/ojo.2015.51001",
  needsAll: ["tap"],
  *check(input) {
    for (const work of works(input)) {
      const { screw, recipe } = work;
      if (screw.self_tapping) continue;
      if (!recipe.steps.some(({ verb }) => verb === "tap")) {
        yield {
          file: recipe.file,
          path: ["steps"],
          message: `Missing a step that taps: ${screw.called} does not cut its own thread`,
        };
      }
      const tap = meant(work, "tap");
      if (tap?.pitch === screw.pitch) continue;
      const got = tap === undefined ? "none of that diameter" : `pitch ${mm(tap.pitch)}`;
      yield {
        file: screw.file,
        path: ["self_tapping"],
        message: `Expected a tap ${mm(screw.major)} with pitch ${mm(screw.pitch)} for ${screw.called}, got ${got}`,
      };
    }
  },
  examples: [
    {
      title: "a screw with cutting flutes",
      passes: true,
      shows: "Cortical 3.5 is self-tapping: a tap is used only when the surgeon asks.",
      edits: [],
    },
    {
      title: "a blunt screw with its own tap",
      passes: true,
      shows: "Cortical 3.5 not self-tapping, pitch 1.25; tap 3.5 with pitch 1.25.",
      edits: [{ file: "screw/cortical-35", path: ["self_tapping"], value: false }],
    },
    {
      title: "a blunt screw and a tap of another pitch",
      passes: false,
      shows: "Cortical 3.5 not self-tapping, pitch 1.25; tap 3.5 with pitch 1.5.",
      edits: [
        { file: "screw/cortical-35", path: ["self_tapping"], value: false },
        { file: "instrument/tap-35", path: ["pitch"], value: 1.5 },
      ],
    },
    {
      title: "a blunt screw without a tap",
      passes: false,
      shows: "Locking 3.5 not self-tapping; its technique has no step that taps.",
      edits: [{ file: "screw/locking-35", path: ["self_tapping"], value: false }],
    },
  ],
};

import { known } from "../../model/catalogue.ts";
import type { Rule } from "../../model/rule.ts";
import { keptOtherwise } from "../kept-otherwise.ts";

/** On a hook plate the hooks are seated and checked before any screw. */
export const hooksAreCheckedFirst: Rule = {
  id: "hooks-are-checked-first",
  severity: "stop",
  about: "technique",
  summary: "A procedure for a plate with hooks seats and checks them before its first screw.",
  why: "The first screw locks in whatever the hooks do: over the edge, or standing proud.",
  fix: "Put a step that seats the hooks before the first step that fills a hole.",
  source: "common practice",
  *check({ catalogue }) {
    const plates = [...catalogue.plates.values()].map((plate) =>
      "mirror_of" in plate ? known(catalogue.plates, plate.mirror_of) : plate,
    );
    const hooked = new Set(
      plates.flatMap((plate) => ("hooks" in plate && plate.hooks ? plate.family : [])),
    );
    for (const procedure of catalogue.procedures.values()) {
      const family = procedure.families.find((one) => hooked.has(one));
      const first = procedure.steps.findIndex(({ fills }) => fills);
      if (family === undefined || first < 0) continue;
      const seated = procedure.steps.findIndex(({ verb }) => verb === "seat-hooks");
      if (seated >= 0 && seated < first) continue;
      const got =
        seated < 0
          ? "no such step"
          : `step ${seated + 1}, after the first screw in step ${first + 1}`;
      yield {
        file: procedure.file,
        path: ["steps", first],
        severity: keptOtherwise(catalogue, procedure),
        message: `Expected the hooks of ${family} to be seated and checked before any screw, got ${got}`,
      };
    }
  },
  examples: [
    {
      title: "a procedure for a plate without hooks",
      passes: true,
      shows: "The plate has no hooks: nothing to seat.",
      edits: [],
    },
    {
      title: "a hook plate whose first step is a screw",
      passes: false,
      shows: "The plate has 2 hooks, 5.5 mm deep; the procedure has no step that seats them.",
      edits: [
        {
          file: "plate/lower-fibula-left",
          path: ["hooks"],
          value: { count: 2, depth: 5.5, spread: 7, engages: "The tip of the bone.", at: "start" },
        },
      ],
    },
  ],
};

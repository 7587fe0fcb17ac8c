import { known } from "../../model/catalogue.ts";
import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";
import { keptOtherwise } from "../kept-otherwise.ts";

const hooks = {
  "plate/lower-fibula-left hooks": {
    count: 2,
    depth: 5.5,
    spread: 7,
    engages: "The tip of the bone.",
    at: "start",
  },
};
const steps = "procedure/lower-fibula steps";
const look = { id: "see", verb: "confirm", say: "Look at the hooks.", decides: "surgeon" };

/** On a hook plate the hooks are seated and checked before any screw. */
export const hooksAreCheckedFirst: Rule = {
  id: "hooks-are-checked-first",
  severity: "stop",
  about: "technique",
  summary:
    "A procedure for a plate with hooks seats them, and the surgeon looks, before its first screw.",
  why: "The first screw locks in whatever the hooks do: over the edge, or standing proud.",
  fix: "Put a step that seats the hooks, and one that confirms it, before the first step that fills a hole.",
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
      const looked = procedure.steps
        .slice(seated + 1, first)
        .some(({ verb, decides }) => verb === "confirm" && decides !== undefined);
      if (seated >= 0 && seated < first && looked) continue;
      const after = `step ${seated + 1}, after the first screw in step ${first + 1}`;
      const got =
        seated < 0 ? "no such step" : seated > first ? after : "no look by the surgeon after it";
      yield {
        file: procedure.file,
        path: ["steps", first],
        severity: keptOtherwise(catalogue, procedure),
        message: `Expected the hooks of ${family} to be seated and checked before any screw, got ${got}`,
      };
    }
  },
  examples: [
    passes("no hooks", "The plate has no hooks: nothing to seat."),
    fails("a screw first", "The plate has 2 hooks; no step seats them.", hooks),
    passes("seated and looked at", "Step 1 seats the hooks, step 2 confirms, step 3 fills.", {
      ...hooks,
      [`${steps}.0.verb`]: "seat-hooks",
      [`${steps}.1`]: look,
    }),
    fails("seated, not looked at", "Step 1 seats the hooks, step 2 is a screw.", {
      ...hooks,
      [`${steps}.0.verb`]: "seat-hooks",
    }),
    fails("seated too late", "Step 2 is a screw, step 4 seats the hooks.", {
      ...hooks,
      [`${steps}.3`]: { id: "seat", verb: "seat-hooks", say: "Seat the hooks." },
    }),
  ],
};

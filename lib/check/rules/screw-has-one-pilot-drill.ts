import { mm } from "../../model/measure.ts";
import type { Rule } from "../../model/rule.ts";

/** One pilot drill of the system answers each screw. */
export const screwHasOnePilotDrill: Rule = {
  id: "screw-has-one-pilot-drill",
  severity: "stop",
  about: "screw",
  summary: "Exactly one pilot drill of the system has the diameter the screw asks for.",
  why: "With no drill the chain breaks; with two, whoever is tired picks one. The card must be able to name the drill.",
  fix: "Give each drill its diameter and its use (pilot or gliding) as the instructions for use state them.",
  source: "common practice",
  needsAll: ["drill"],
  *check({ catalogue }) {
    for (const screw of catalogue.screws.values()) {
      const drills = [...catalogue.instruments.values()].filter(
        (tool) =>
          (tool.system === screw.system || tool.system === "general") &&
          tool.kind === "drill" &&
          tool.use === "pilot" &&
          tool.diameter === screw.pilot,
      );
      if (drills.length === 1) continue;
      const got = drills.length === 0 ? "none" : drills.map(({ id }) => id).join(", ");
      yield {
        file: screw.file,
        path: ["pilot"],
        message: `Expected one pilot drill ${mm(screw.pilot)} for ${screw.called}, got ${got}`,
      };
    }
  },
  examples: [
    {
      title: "one drill of the stated diameter",
      passes: true,
      shows: "Locking 3.5 states pilot 2.7; one drill 2.7 for pilot holes answers.",
      edits: [],
    },
    {
      title: "no drill of the stated diameter",
      passes: false,
      shows: "Locking 3.5 states pilot 2.6; the system has drills 2.0, 2.5 and 2.7.",
      edits: [{ file: "screw/locking-35", path: ["pilot"], value: 2.6 }],
    },
    {
      title: "two drills of the stated diameter",
      passes: false,
      shows: "The gliding drill 2.7 is called a pilot drill too: two drills 2.7 answer.",
      edits: [{ file: "instrument/drill-27-gliding", path: ["use"], value: "pilot" }],
    },
  ],
};

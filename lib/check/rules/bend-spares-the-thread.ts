import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";
import { keptOtherwise } from "../kept-otherwise.ts";

/** Where a plate may be bent there is no thread between the two holes it is bent between. */
export const bendSparesTheThread: Rule = {
  id: "bend-spares-the-thread",
  severity: "stop",
  about: "plate",
  summary:
    "A zone in which a plate may be bent lies between two holes, with no threaded hole between them.",
  why: "A bent thread no longer takes its screw square; the head jams or stands proud.",
  fix: "Name two neighbouring holes, or cite the section of the instructions for use that allows it (source.fields.bend_zones).",
  source: "common practice",
  *check({ catalogue, derived }) {
    for (const plate of catalogue.plates.values()) {
      if (!("row" in plate)) continue;
      const longest = derived.plates.findLast((laid) => laid.plate === plate.id);
      const at = new Map(longest?.holes.map((hole) => [hole.label, hole]));
      for (const [index, { between }] of plate.bend_zones.entries()) {
        const [from, to] = between.map((label) => at.get(label)?.at[0] ?? 0).sort((a, b) => a - b);
        const bent = [...at.values()].filter(
          (hole) =>
            hole.at[0] > (from ?? 0) &&
            hole.at[0] < (to ?? 0) &&
            hole.zones.some(({ kind }) => kind === "threaded"),
        );
        const message =
          from === to
            ? `Expected two holes to bend between, got ${between.join(" and ")}`
            : `Expected no threaded hole between ${between.join(" and ")}, got ${bent.map(({ label }) => label).join(", ")}`;
        if (from === to || bent.length > 0)
          yield {
            file: plate.file,
            path: ["bend_zones", index],
            severity: keptOtherwise(catalogue, plate, "bend_zones"),
            message,
          };
      }
    }
  },
  examples: [
    passes("between neighbours", "May be bent between S1 and S2.", {
      "plate/lower-fibula-left bend_zones": [{ between: ["S1", "S2"] }],
    }),
    fails("across a threaded hole", "May be bent between S1 and S3: S2 is threaded.", {
      "plate/lower-fibula-left bend_zones": [{ between: ["S1", "S3"] }],
    }),
    fails("at one hole", "May be bent between S1 and S1.", {
      "plate/lower-fibula-left bend_zones": [{ between: ["S1", "S1"] }],
    }),
  ],
};

import { known } from "../../model/catalogue.ts";
import type { Rule } from "../../model/rule.ts";

/** Each planned screw has a chain: it is permitted in its hole, and the technique suits both. */
export const planHasItsChain: Rule = {
  id: "plan-has-its-chain",
  severity: "stop",
  about: "case",
  summary:
    "Each line of a plan names a screw its hole permits and a technique that suits hole and screw, so that its instruments are known.",
  why: "Without a chain the case sheet would have a screw with no drill, guide or driver beside it.",
  fix: "Choose a screw the hole permits, or a technique for this kind of hole and screw.",
  source: "common practice",
  *check({ catalogue, derived }) {
    const closed = new Set(
      [...derived.chains, ...derived.gaps].map(
        ({ zone, screw, recipe }) => `${zone} ${screw} ${recipe}`,
      ),
    );
    for (const { file, plan } of catalogue.cases.values()) {
      for (const [index, { zone, screw, recipe }] of plan.entries()) {
        if (closed.has(`${zone} ${screw} ${recipe}`)) continue;
        const { called } = known(catalogue.screws, screw);
        const hole = known(catalogue.zones, zone);
        const permitted = "permits" in hole && hole.permits.includes(screw);
        const [field, message] = permitted
          ? ["recipe", `Expected a technique for ${called} in ${hole.name}, got ${recipe}`]
          : ["screw", `Expected a screw that ${hole.name} permits, got ${called}`];
        yield { file, path: ["plan", index, field], message };
      }
    }
  },
  examples: [
    {
      title: "a permitted screw by its technique",
      passes: true,
      shows: "S3, threaded part 3.5, locking 3.5, through the sleeve.",
      edits: [],
    },
    {
      title: "a screw the hole does not permit",
      passes: false,
      shows: "Locking 3.5 planned in oblong 3.5.",
      edits: [
        {
          file: "case/case-a",
          path: ["plan", 0],
          value: {
            hole: "S1",
            zone: "oblong-35",
            screw: "locking-35",
            recipe: "locking-through-sleeve",
            order: 1,
          },
        },
      ],
    },
  ],
};

import type { Chain, Role } from "../../model/chain.ts";
import type { ProcedureStep } from "../../model/recipe.ts";
import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";

/** What turns the screw; the rest is read off each screw's row. */
const watched = ["driver", "limiter"] as const satisfies readonly Role[];

const fill = {
  recipe: "locking-through-sleeve",
  screw: "locking-27",
  zone: "threaded-27",
  region: "head",
  repeat: "each-planned",
};
const small = (changes: readonly string[]) => ({
  "procedure/lower-fibula steps.0": {
    id: "small",
    verb: "drive-screw",
    say: "Locking screws of the head.",
    fills: fill,
  },
  "procedure/lower-fibula steps.1": {
    id: "large",
    verb: "drive-screw",
    say: "Locking screws of the shaft.",
    changes,
    fills: { ...fill, screw: "locking-35", zone: "threaded-35", region: "shaft" },
  },
});

/** Where a procedure goes on to screws of another size, it says what is exchanged. */
export const sizeChangeIsTold: Rule = {
  id: "size-change-is-told",
  severity: "note",
  about: "technique",
  summary:
    "Between two steps whose screws need another driver or another torque limiter, a step names what is exchanged (changes).",
  why: "On a plate with two sizes the driver of one slips in the other, and its limiter tears the drive or leaves the head loose.",
  fix: "Write changes: [driver, limiter] at the step that begins the other size, or at a step before it.",
  source: "common practice",
  *check({ catalogue, derived }) {
    const chains = new Map(
      derived.chains.map((chain) => [`${chain.zone} ${chain.screw} ${chain.recipe}`, chain]),
    );
    const chainOf = ({ fills }: ProcedureStep): Chain | undefined =>
      fills && chains.get(`${fills.zone} ${fills.screw} ${fills.recipe}`);
    const tool = (chain: Chain, role: Role) =>
      chain.links.find((link) => link.role === role)?.instrument;
    for (const { file, steps } of catalogue.procedures.values()) {
      let before: { readonly chain: Chain; readonly index: number } | undefined;
      for (const [index, step] of steps.entries()) {
        const chain = chainOf(step);
        if (chain === undefined) continue;
        const told = new Set(
          steps.slice((before?.index ?? index) + 1, index + 1).flatMap(({ changes }) => changes),
        );
        for (const role of watched) {
          const [old, now] = [before && tool(before.chain, role), tool(chain, role)];
          if (old === undefined || now === undefined || old === now || told.has(role)) continue;
          yield {
            file,
            path: ["steps", index],
            message: `Missing that the ${role} is exchanged here: ${now} for ${old}`,
          };
        }
        before = { chain, index };
      }
    }
  },
  examples: [
    passes(
      "driver and limiter exchanged",
      "Locking 2.7, then locking 3.5: driver 10 for 20, limiter 0.9 for 1.6, both named.",
      small(["driver", "limiter"]),
    ),
    fails(
      "nothing said",
      "Locking 2.7, then locking 3.5, and no word of driver or limiter.",
      small([]),
    ),
    fails(
      "half said",
      "Locking 2.7, then locking 3.5: the driver is named, the limiter is not.",
      small(["driver"]),
    ),
  ],
};

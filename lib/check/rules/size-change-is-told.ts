import type { Chain } from "../../model/chain.ts";
import { type Exchangeable, exchangeables, heldOf, isExchanged } from "../../model/exchange.ts";
import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";

/** What turns the screw is told whenever it is exchanged; the rest, where a step names anything. */
const always: ReadonlySet<Exchangeable> = new Set(["driver", "limiter"]);

const nameOf = ({ zone, screw, recipe }: Pick<Chain, "zone" | "screw" | "recipe">): string =>
  `${zone} ${screw} ${recipe}`;

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
  severity: "sign",
  about: "technique",
  summary:
    "Between two steps whose screws need another driver or torque limiter, a step names what is exchanged (changes); a step that names anything names all that is exchanged, and nothing else.",
  why: "On a plate with two sizes the driver of one slips in the other, and its limiter tears the drive or leaves the head loose.",
  fix: "Write changes at the step that begins the other size, or at a step before it: drill, guide, sleeve, driver, limiter, as they differ.",
  source: "common practice",
  needsAll: ["instrument"],
  *check({ catalogue, derived }) {
    const chains = new Map(derived.chains.map((chain) => [nameOf(chain), chain]));
    const open = new Set(derived.gaps.map(({ chain }) => chain));
    const isOpen = (chain: Chain | undefined): boolean => chain !== undefined && open.has(chain.id);
    for (const { file, steps } of catalogue.procedures.values()) {
      if (steps.some(({ fills }) => fills && isOpen(chains.get(nameOf(fills))))) continue;
      let before: { readonly chain: Chain; readonly index: number } | undefined;
      for (const [index, { fills }] of steps.entries()) {
        const chain = fills && chains.get(nameOf(fills));
        if (chain === undefined) continue;
        const told = new Set(
          steps.slice((before?.index ?? index) + 1, index + 1).flatMap(({ changes }) => changes),
        );
        for (const part of exchangeables) {
          const differs = before !== undefined && isExchanged(before.chain, chain, part);
          const now = heldOf(chain, part);
          const asked = differs && (always.has(part) || told.size > 0);
          if (asked === told.has(part)) continue;
          yield {
            file,
            path: ["steps", index],
            message: asked
              ? `Missing that the ${part} is exchanged here: ${now} for ${before && heldOf(before.chain, part)}`
              : `Expected no word of another ${part} here: ${now || "none"} stays`,
          };
        }
        before = { chain, index };
      }
    }
  },
  examples: [
    passes(
      "all exchanged, all named",
      "Locking 2.7, then locking 3.5: drill 2.0 for 2.7, sleeve, driver and limiter, all named.",
      small(["drill", "sleeve", "driver", "limiter"]),
    ),
    passes(
      "an instrument that is missing",
      "No drill 2.7 for locking 3.5: what would be exchanged for it is not known, and the chain says so.",
      { ...small(["sleeve", "driver", "limiter"]), "screw/locking-35 pilot": 2.6 },
    ),
    fails(
      "nothing said",
      "Locking 2.7, then locking 3.5, and no word of driver or limiter.",
      small([]),
    ),
    fails(
      "half said",
      "Locking 2.7, then locking 3.5: the driver is named, the limiter is not.",
      small(["drill", "sleeve", "driver"]),
    ),
    fails(
      "more said than done",
      "Locking 2.7, then locking 3.5: a guide is named, and neither chain has one.",
      small(["drill", "guide", "sleeve", "driver", "limiter"]),
    ),
  ],
};

import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";
import { works } from "../work.ts";

/** Every screw that a hole permits goes in by some usual technique. */
export const permitHasItsTechnique: Rule = {
  id: "permit-has-its-technique",
  severity: "stop",
  about: "technique",
  summary:
    "For every screw a hole permits there is a technique that is used unless the surgeon asks for another.",
  why: "Without a technique the screw has no row on any card, although the instructions for use permit it there.",
  fix: "Add the hole's kind and the screw's class to a technique, or take the permit out.",
  source: "common practice",
  needsAll: ["recipe"],
  *check(input) {
    const usual = works(input).filter(({ recipe }) => recipe.default);
    for (const zone of input.catalogue.zones.values()) {
      if (!("permits" in zone)) continue;
      for (const [index, screw] of zone.permits.entries())
        if (!usual.some((work) => work.zone.id === zone.id && work.screw.id === screw))
          yield {
            file: zone.file,
            path: ["permits", index],
            message: `Expected a technique for ${screw} in ${zone.name}, got none`,
          };
    }
  },
  examples: [
    passes("a technique for each", "Cortical 3.5 in an oblong part: neutral."),
    fails("a kind of hole left out", "No technique is for a threaded part.", {
      "recipe/locking-through-sleeve zone_kinds": ["plain-round"],
    }),
    fails("only when asked for", "The one technique for locking screws is not the usual one.", {
      "recipe/locking-through-sleeve default": false,
    }),
  ],
};

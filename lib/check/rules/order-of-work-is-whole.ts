import type { Catalogue } from "../../model/catalogue.ts";
import type { Derived } from "../../model/chain.ts";
import type { Defined } from "../../model/definition.ts";
import type { Procedure } from "../../model/recipe.ts";
import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";
import { platesOf } from "../procedure-fills.ts";

/** The openings of a family that take screws, by region, with the most holes of each on one plate. */
function screwHoles(catalogue: Catalogue, derived: Derived, family: string) {
  const most = new Map<string, { readonly zones: readonly string[]; readonly holes: number }>();
  for (const { holes } of platesOf(catalogue, derived, [family]))
    for (const { opening, region, zones } of holes) {
      const takes = zones.filter(({ kind }) => kind !== "wire" && kind !== "suture");
      if (takes.length === 0) continue;
      const same = holes.filter((hole) => hole.opening === opening && hole.region === region);
      const key = `${opening} in the ${region}`;
      const before = most.get(key)?.holes ?? 0;
      most.set(key, {
        zones: takes.map(({ zone }) => `${zone} ${region}`),
        holes: Math.max(before, same.length),
      });
    }
  return most;
}

/** What the orders of work for one family leave out, in words. */
function* lacking(
  catalogue: Catalogue,
  derived: Derived,
  family: string,
  own: readonly Defined<Procedure>[],
): Generator<string> {
  const steps = own.flatMap((procedure) => procedure.steps);
  if (!steps.some(({ verb }) => verb === "hold" || verb === "seat-hooks"))
    yield "a step that holds the plate";
  const ends = own.filter((procedure) => procedure.steps.at(-1)?.verb === "count");
  if (ends.length === 0) yield "the count as the last step";
  for (const { steps: all } of ends) {
    const tail = all.slice(all.findLastIndex(({ fills }) => fills !== undefined) + 1);
    if (!tail.some(({ verb, decides }) => verb === "confirm" && decides !== undefined))
      yield "a last look by the surgeon before the count";
  }
  for (const [where, { zones, holes }] of screwHoles(catalogue, derived, family)) {
    const filled = steps.flatMap(({ fills }) =>
      fills && zones.includes(`${fills.zone} ${fills.region}`) ? fills.repeat : [],
    );
    if (filled.length === 0) yield `a screw for ${where}`;
    else if (holes > 1 && !filled.includes("each-planned"))
      yield `a step for every planned screw of ${where}`;
  }
}

/** The order of work for a plate, in one part or two, is whole. */
export const orderOfWorkIsWhole: Rule = {
  id: "order-of-work-is-whole",
  severity: "sign",
  about: "technique",
  summary:
    "For each plate family that has one, the order of work holds the plate, fills every kind of hole that takes screws, lets the surgeon look once more, and counts last.",
  why: "What no step names is left out, or is done when somebody remembers it.",
  fix: "Add the step, or sign why the publisher leaves it out.",
  source: "common practice",
  needsAll: ["procedure"],
  *check({ catalogue, derived }) {
    const all = [...catalogue.procedures.values()];
    for (const family of new Set(all.flatMap(({ families }) => families))) {
      const own = all.filter(({ families }) => families.includes(family));
      for (const what of lacking(catalogue, derived, family, own))
        yield {
          file: own[0]?.file ?? "",
          path: ["steps"],
          message: `Missing in the order of work for ${family}: ${what}`,
        };
    }
  },
  examples: [
    passes("whole", "Held, both kinds of hole filled, looked at, counted."),
    fails("not held", "The first step looks, and none holds.", {
      "procedure/lower-fibula steps.0.verb": "confirm",
    }),
    fails("not counted last", "The wires come out after the count.", {
      "procedure/lower-fibula steps.7.verb": "take-out-wires",
    }),
    fails("no last look", "After the last screw nobody looks.", {
      "procedure/lower-fibula steps.6.verb": "hold",
    }),
    fails("one screw for a row", "One screw in the shaft, and the row has five holes.", {
      "procedure/lower-fibula steps.1.fills.repeat": "one",
      "procedure/lower-fibula steps.2.fills.repeat": "one",
    }),
    fails("a kind of hole left out", "Nothing is filled in the head.", {
      "procedure/lower-fibula steps.3.fills": undefined,
    }),
  ],
};

import { mm } from "../../model/measure.ts";
import type { Recipe } from "../../model/recipe.ts";
import type { Rule } from "../../model/rule.ts";
import { keptOtherwise } from "../kept-otherwise.ts";

function faults({ steps, needs }: Recipe): readonly (readonly [number, string])[] {
  const at = (verb: string): number => steps.findIndex((step) => step.verb === verb);
  const [gliding, insert, pilot, sink] = [
    at("drill-gliding"),
    at("place-insert"),
    at("drill-pilot"),
    at("countersink"),
  ];
  const found: (readonly [number, string])[] = [];
  if (needs.includes("gliding") && gliding < 0)
    found.push([0, "Missing the step that drills the gliding hole"]);
  if (gliding >= 0 && steps[gliding]?.near_cortex_only !== true)
    found.push([
      gliding,
      "Expected the gliding hole in the near cortex only, got a step that does not say so",
    ]);
  if (gliding >= 0 && !(gliding < insert && insert < pilot))
    found.push([gliding, "Expected gliding hole, insert, pilot hole in this order, got another"]);
  if (sink >= 0)
    found.push([sink, "Expected no countersink in a plate's hole, got a step that countersinks"]);
  return found;
}

/** A lag screw's gliding hole is drilled first, on the near side only, and is of the right width. */
export const glidingHoleComesFirst: Rule = {
  id: "gliding-hole-comes-first",
  severity: "stop",
  about: "technique",
  summary:
    "For a lag screw: gliding hole in the near cortex only, then the insert, then the pilot hole; the gliding hole is as wide as a full thread, or between shaft and thread of a partial one.",
  why: "A gliding hole drilled on both sides leaves the thread nothing to hold, and the screw draws nothing together.",
  fix: "Put the steps in that order and mark the gliding step near_cortex_only; correct the screw's gliding diameter.",
  source:
    "common practice; S. K. Shrestha, orthopaedic screw insertion, teaching page, 2021 (gliding hole of the outer diameter)",
  *check({ catalogue }) {
    for (const recipe of catalogue.recipes.values()) {
      for (const [index, message] of faults(recipe))
        yield {
          file: recipe.file,
          path: ["steps", index],
          severity: keptOtherwise(catalogue, recipe),
          message,
        };
    }
    for (const screw of catalogue.screws.values()) {
      const { gliding, major, shaft, thread, called, file } = screw;
      if (gliding === undefined) continue;
      const right =
        thread.extent === "full" ? gliding === major : gliding < major && gliding >= (shaft ?? 0);
      const wanted =
        thread.extent === "full" ? mm(major) : `${mm(shaft ?? 0)} to under ${mm(major)}`;
      if (!right)
        yield {
          file,
          path: ["gliding"],
          message: `Expected a gliding drill ${wanted} for ${called}, got ${mm(gliding)}`,
        };
    }
  },
  examples: [
    {
      title: "near side first, as wide as the thread",
      passes: true,
      shows: "Cortical 3.5: gliding drill 3.5 in the near cortex, insert, drill 2.5.",
      edits: [],
    },
    {
      title: "a gliding hole narrower than a full thread",
      passes: false,
      shows: "Cortical 3.5 with gliding drill 3.4: the thread would grip the near side too.",
      edits: [{ file: "screw/cortical-35", path: ["gliding"], value: 3.4 }],
    },
    {
      title: "pilot hole first",
      passes: false,
      shows: "Drill 2.5, then gliding drill 3.5.",
      edits: [
        {
          file: "recipe/lag-through-plate",
          path: ["steps"],
          value: [
            {
              id: "pilot",
              verb: "drill-pilot",
              say: "Drill the pilot hole.",
              uses: { kind: "drill", use: "pilot" },
            },
            {
              id: "gliding",
              verb: "drill-gliding",
              say: "Drill the near side.",
              uses: { kind: "drill", use: "gliding" },
              near_cortex_only: true,
            },
            {
              id: "insert",
              verb: "place-insert",
              say: "Put the insert in.",
              uses: { kind: "reduction-insert" },
            },
          ],
        },
      ],
    },
  ],
};

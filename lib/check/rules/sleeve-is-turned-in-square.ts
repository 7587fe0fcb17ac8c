import type { Rule } from "../../model/rule.ts";
import { keptOtherwise } from "../kept-otherwise.ts";

/** A technique with a threaded sleeve says that it is turned in by hand and stands square. */
export const sleeveIsTurnedInSquare: Rule = {
  id: "sleeve-is-turned-in-square",
  severity: "stop",
  about: "technique",
  summary:
    "A technique that uses a threaded sleeve has a step that turns it in by hand and checks that it stands square, before drilling.",
  why: "A cross-threaded sleeve points the drill off the axis; the screw head then never seats.",
  fix: "Add the step before drilling, and say in it: by hand, and square (or straight).",
  source: "common practice",
  *check({ catalogue }) {
    for (const recipe of catalogue.recipes.values()) {
      const { steps, file } = recipe;
      if (
        !steps.some(({ uses, also }) =>
          [uses, ...also].some((query) => query?.kind === "threaded-sleeve"),
        )
      )
        continue;
      const severity = keptOtherwise(catalogue, recipe);
      const index = steps.findIndex(({ verb }) => verb === "turn-in-sleeve");
      const drilled = steps.findIndex(({ verb }) => verb === "drill-pilot");
      if (index < 0 || (drilled >= 0 && drilled < index)) {
        yield {
          file,
          path: ["steps"],
          severity,
          message: "Missing the step that turns the sleeve in before drilling",
        };
        continue;
      }
      const say = steps[index]?.say ?? "";
      if (/\bby hand\b/i.test(say) && /\b(square|squarely|straight|upright)\b/i.test(say)) continue;
      yield {
        file,
        path: ["steps", index, "say"],
        severity,
        message: `Expected "by hand" and "square" in the step that turns the sleeve in, got "${say}"`,
      };
    }
  },
  examples: [
    {
      title: "by hand and square",
      passes: true,
      shows: "Turn the sleeve in by hand until it stands square on the plate.",
      edits: [],
    },
    {
      title: "no word of how it must stand",
      passes: false,
      shows: "Put the sleeve in.",
      edits: [
        {
          file: "recipe/locking-through-sleeve",
          path: ["steps", 0],
          value: {
            id: "sleeve",
            verb: "turn-in-sleeve",
            say: "Put the sleeve in.",
            uses: { kind: "threaded-sleeve" },
          },
        },
      ],
    },
  ],
};

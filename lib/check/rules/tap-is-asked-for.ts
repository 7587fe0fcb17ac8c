import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";
import { keptOtherwise } from "../kept-otherwise.ts";

/** Whether the thread is cut first depends on screw and bone: the surgeon says. */
export const tapIsAskedFor: Rule = {
  id: "tap-is-asked-for",
  severity: "stop",
  about: "technique",
  summary: "A step that cuts the thread says when the surgeon may leave it out.",
  why: "In soft bone a thread that is cut first holds less; in hard bone a screw that cuts its own can jam. Only the surgeon feels which it is.",
  fix: "Add skip to the step, with when, and by: surgeon.",
  source: "common practice",
  *check({ catalogue }) {
    for (const technique of catalogue.recipes.values())
      for (const [index, { id, verb, skip }] of technique.steps.entries())
        if (verb === "tap" && skip?.by !== "surgeon")
          yield {
            file: technique.file,
            path: ["steps", index],
            severity: keptOtherwise(catalogue, technique),
            message: `Missing when the surgeon may leave out step "${id}" of ${technique.name}`,
          };
  },
  examples: [
    passes("left out by the surgeon", "The tap is skipped where the screw cuts its own thread."),
    fails("always tapped", "The tap's step may not be left out.", {
      "recipe/cortical-neutral steps.4.skip": undefined,
    }),
    fails("left out by somebody else", "The local protocol leaves the tap out.", {
      "recipe/cortical-neutral steps.4.skip.by": "instructions-or-protocol",
    }),
  ],
};

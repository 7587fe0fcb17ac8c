import type { Defined } from "../../model/definition.ts";
import type { Recipe, Verb } from "../../model/recipe.ts";
import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";

const placed = new Set<Verb>(["aim-guide", "turn-in-sleeve", "place-insert"]);
const cuts = new Set<Verb>(["turn-in-sleeve", "aim-guide", "drill-gliding", "drill-pilot"]);

/** What a technique leaves out, in words. */
function* lacking({ steps, needs, zone_kinds, screw_classes }: Defined<Recipe>): Generator<string> {
  const verbs = steps.map(({ verb }) => verb);
  const has = (...any: readonly Verb[]): boolean => any.some((verb) => verbs.includes(verb));
  const locks = screw_classes.includes("locking");
  const plain = zone_kinds.some((kind) => kind !== "threaded");
  if (!has("drill-pilot")) yield "the pilot drill";
  if (!has("measure", "read-marks")) yield "measuring";
  const ways = steps.filter(({ verb }) => verb === "measure" || verb === "read-marks");
  if (has("measure") && has("read-marks") && ways.some(({ skip }) => skip === undefined))
    yield "two ways of measuring of which each may be left out for the other";
  if (has("measure") !== has("read-marks") && ways.some(({ skip }) => skip !== undefined))
    yield "the other way of measuring, for which this one may be left out";
  if (!has("drive-screw")) yield "driving the screw";
  if (!has("tighten-by-hand", "tighten-to-limit", "watch-gap")) yield "tightening";
  if (verbs.some((verb) => placed.has(verb)) && !has("take-out"))
    yield "taking out what guides the drill";
  if (plain && !locks && !has("aim-guide", "drill-gliding", "place-insert"))
    yield "a guide for the drill";
  const firstCut = verbs.findIndex((verb) => cuts.has(verb));
  const asked = verbs.slice(0, Math.max(0, firstCut)).includes("confirm");
  if ((locks || needs.length > 0) && !asked) yield "a confirmation before the first instrument";
  const loaded = verbs.indexOf("watch-gap");
  if (needs.includes("travel") && (loaded < 0 || verbs[loaded - 1] !== "confirm"))
    yield "a confirmation that nothing blocks the plate, then watching the gap";
  if (
    locks &&
    !steps.some(({ verb, tally }) => verb === "final-pass" && tally === "locking-screws")
  )
    yield "the tally of locking screws";
}

/** A technique has each step that its kind of screw and hole needs. */
export const techniqueHasEveryStep: Rule = {
  id: "technique-has-every-step",
  severity: "stop",
  about: "technique",
  summary:
    "A technique guides and drills, clears the hole, measures, drives and tightens; a locking, loaded or lag screw is confirmed first, a locking screw is tallied last.",
  why: "A step that is not on the card is a step that nobody hands over for.",
  fix: "Add the step, or correct what the technique is for.",
  source: "common practice",
  *check({ catalogue }) {
    for (const recipe of catalogue.recipes.values())
      for (const what of lacking(recipe))
        yield {
          file: recipe.file,
          path: ["steps"],
          message: `Expected ${what} in ${recipe.name}, got none`,
        };
  },
  examples: [
    passes("every step there", "Guide, drill, guide out, gauge, tap, driver, by hand."),
    fails("no measuring", "The gauge's step takes something out instead.", {
      "recipe/cortical-neutral steps.3.verb": "take-out",
    }),
    fails("the guide stays in", "No step takes the guide out.", {
      "recipe/cortical-neutral steps.2.verb": "hold",
    }),
    fails("a locking screw is not tallied", "The last step ticks nothing.", {
      "recipe/locking-through-sleeve steps.7.tally": undefined,
    }),
    fails("a loaded screw is not confirmed", "The first step aims the guide.", {
      "recipe/cortical-compression steps.0.verb": "hold",
    }),
  ],
};

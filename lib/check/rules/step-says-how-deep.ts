import type { RecipeStep, Verb } from "../../model/recipe.ts";
import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";

const cutting: readonly Verb[] = ["drill-gliding", "drill-pilot", "tap"];

/** A word for a depth: where it is said, what it means, whether the step's facts say the same, and whether it must then be said. */
type Word = {
  readonly said: RegExp;
  readonly means: string;
  readonly holds: boolean;
  readonly must?: boolean;
};

function words({ verb, near_cortex_only: near, decides }: RecipeStep): readonly Word[] {
  const open = verb === "drill-pilot" && !near && decides === "surgeon";
  return [
    {
      said: /\bnear (cortex|side) only\b/i,
      means: "the near cortex only",
      holds: near,
      must: true,
    },
    { said: /\bboth (cortices|sides)\b/i, means: "both cortices", holds: !near && !open },
    { said: /\bfar (cortex|side)\b/i, means: "the far cortex", holds: !near && !open },
    { said: /\bhow deep\b/i, means: "how deep the surgeon decides", holds: open, must: true },
  ];
}

const recipe = "recipe/cortical-neutral";

/** The depth that a step says aloud is the depth that its facts give and its picture shows. */
export const stepSaysHowDeep: Rule = {
  id: "step-says-how-deep",
  severity: "stop",
  about: "technique",
  summary:
    "Where a step drills or taps, its words and its facts name one depth: both cortices, the near cortex only, or how deep the surgeon decides.",
  why: "The line is read aloud and the picture beside it follows the facts: when the two disagree, one of them is wrong.",
  fix: "Correct the words of the step, its near_cortex_only, or who decides.",
  source: "common practice",
  *check({ catalogue }) {
    const inEnglish = catalogue.publisher.language === "en";
    for (const { file, steps } of catalogue.recipes.values())
      for (const [index, step] of steps.entries())
        for (const { said, means, holds, must } of cutting.includes(step.verb) ? words(step) : []) {
          const is = said.test(step.say);
          if (is === holds || (holds && !(must && inEnglish))) continue;
          yield {
            file,
            path: ["steps", index, "say"],
            message: is
              ? `Expected step "${step.id}" to cut ${means}, as it says, got another depth`
              : `Missing in the words of step "${step.id}": ${means}`,
          };
        }
  },
  examples: [
    passes("words and facts agree", 'It says "both cortices"; the drill goes through both.'),
    passes("the surgeon decides", 'It says "how deep"; the surgeon decides at that step.', {
      [`${recipe} steps.1.say`]: "Drill; the surgeon decides how deep.",
      [`${recipe} steps.1.decides`]: "surgeon",
    }),
    fails("near only in words alone", 'It says "near cortex only"; the tap goes through both.', {
      [`${recipe} steps.4.say`]: "Cut the thread in the near cortex only.",
    }),
    fails("near only in facts alone", 'It says "both cortices"; the drill stops after one.', {
      [`${recipe} steps.1.near_cortex_only`]: true,
    }),
    fails("a decision not said", 'It says "both cortices"; the surgeon decides.', {
      [`${recipe} steps.1.decides`]: "surgeon",
    }),
  ],
};

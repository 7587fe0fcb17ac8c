import { type Catalogue, known } from "../../model/catalogue.ts";
import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";
import { type Filling, fillings } from "../procedure-fills.ts";

/** A word that stands for a fact of what is filled: what is expected where it is said, and whether the fact must be said. */
type Word = {
  readonly said: RegExp;
  readonly means: string;
  readonly holds: boolean;
  readonly must?: boolean;
};

function words(catalogue: Catalogue, { fills }: Filling): readonly Word[] {
  const screw = known(catalogue.screws, fills.screw);
  const zone = known(catalogue.zones, fills.zone);
  const { needs, steps } = known(catalogue.recipes, fills.recipe);
  const [loads, lags] = [
    needs.includes("travel"),
    needs.includes("gliding") || needs.includes("partial-thread"),
  ];
  const nearOnly = steps.some((one) => one.verb === "drill-pilot" && one.near_cortex_only);
  const locks = screw.class === "locking";
  return [
    { said: /\b(loaded|offset)\b/i, means: "a loaded screw", holds: loads, must: true },
    { said: /\blag screws?\b/i, means: "a lag screw", holds: lags, must: true },
    { said: /\bnear cortex\b/i, means: "the near cortex only", holds: nearOnly, must: true },
    { said: /\bneutral\b/i, means: "a neutral screw", holds: !loads && !lags && !locks },
    { said: /\blocking screws?\b/i, means: "a locking screw", holds: locks, must: true },
    { said: /\bplain-head screws?\b/i, means: "a plain-head screw", holds: !locks },
    { said: /\bcancellous\b/i, means: "a cancellous screw", holds: screw.class === "cancellous" },
    { said: /\bcortical\b/i, means: "a cortical screw", holds: screw.class === "cortical" },
    { said: /\boblong\b/i, means: "an oblong part", holds: zone.kind === "plain-oblong" },
    { said: /\bround hole\b/i, means: "a plain round hole", holds: zone.kind === "plain-round" },
    { said: /\bshaft\b/i, means: "the shaft", holds: fills.region === "shaft" },
    {
      said: /\b(of|in) the head\b|\bhead holes?\b/i,
      means: "the head",
      holds: fills.region === "head",
    },
  ];
}

const say = (step: number, text: string) => ({
  [`procedure/lower-fibula steps.${step}.say`]: text,
});

/** What a step says aloud is what it fills. */
export const stepSaysWhatItFills: Rule = {
  id: "step-says-what-it-fills",
  severity: "stop",
  about: "technique",
  summary:
    "The words of a step that fills holes agree with screw, technique, hole and region it fills them with; loaded, lag, locking and near-cortex screws are called so.",
  why: "The line is read aloud and the instruments beside it are handed over: when the two disagree, one of them is wrong.",
  fix: "Correct the words of the step, or the screw, recipe, zone or region of its fills.",
  source: "common practice",
  *check({ catalogue }) {
    const inEnglish = catalogue.publisher.language === "en";
    for (const filling of fillings(catalogue)) {
      const { procedure, step, index } = filling;
      for (const { said, means, holds, must } of words(catalogue, filling)) {
        const is = said.test(step.say);
        if (is === holds || (holds && !(must && inEnglish))) continue;
        yield {
          file: procedure.file,
          path: ["steps", index, "say"],
          message: is
            ? `Expected step "${step.id}" to fill with ${means}, as it says, got another`
            : `Missing in the words of step "${step.id}": ${means}`,
        };
      }
    }
  },
  examples: [
    passes("words and fill agree", "It says plain-head screw; it fills with cortical 3.5."),
    fails(
      "another technique said",
      "It says loaded; the technique is the neutral one.",
      say(1, "Loaded screw in the shaft."),
    ),
    fails(
      "another screw said",
      "It says locking screws; it fills with cortical 3.5.",
      say(1, "Locking screws of the shaft."),
    ),
    fails(
      "another region said",
      "It says head; it fills in the shaft.",
      say(2, "Locking screws of the head."),
    ),
    fails(
      "a locking screw not called so",
      "It says screws; it fills with locking 3.5.",
      say(2, "Screws of the shaft."),
    ),
  ],
};

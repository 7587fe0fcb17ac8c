import type { Defined } from "../../model/definition.ts";
import type { Query, Recipe, RecipeStep, Verb } from "../../model/recipe.ts";
import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";

/** What each verb is done with, joined in this order. */
const tools: Partial<Record<Verb, readonly string[]>> = {
  "aim-guide": ["plain-guide"],
  "turn-in-sleeve": ["threaded-sleeve"],
  "drill-pilot": ["drill pilot"],
  "drill-gliding": ["drill gliding"],
  "place-insert": ["reduction-insert"],
  "read-marks": ["drill pilot"],
  measure: ["depth-gauge"],
  tap: ["tap"],
  countersink: ["countersink"],
  "drive-screw": ["driver-shaft"],
  "tighten-by-hand": ["driver-shaft", "handle"],
  "watch-gap": ["driver-shaft", "handle"],
  "tighten-to-limit": ["driver-shaft", "torque-limiter", "handle"],
};
const placing = ["turn-in-sleeve", "aim-guide", "place-insert"];

const asked = ({ uses, also }: RecipeStep): readonly Query[] => (uses ? [uses, ...also] : also);
const worded = (query: Query): string =>
  query.kind === "drill" ? `drill ${query.use}` : query.kind;

/** What a step should ask for and does not; undefined where it asks for its own. */
function wrong({ steps, needs }: Defined<Recipe>, step: RecipeStep, index: number) {
  const queries = asked(step);
  if (step.verb === "take-out") {
    const last = steps.slice(0, index).findLast(({ verb }) => placing.includes(verb));
    const same = JSON.stringify(last?.uses) === JSON.stringify(step.uses);
    return last === undefined || same ? undefined : `what step "${last.id}" put in`;
  }
  const end = needs.includes("travel") ? "offset" : "centred";
  const guide = queries.find((query) => query.kind === "plain-guide");
  if (guide?.kind === "plain-guide" && guide.use === "pilot" && guide.end !== end)
    return `the ${end} end of the guide`;
  const wanted = tools[step.verb];
  if (wanted === undefined) return undefined;
  const got = queries.map(worded).filter((word) => wanted.includes(word));
  return got.join() === wanted.join()
    ? undefined
    : wanted.join(", ").replace(/drill (\w+)/, "the $1 drill");
}

/** Each step of a technique asks for the instruments it is done with. */
export const stepAsksForItsInstrument: Rule = {
  id: "step-asks-for-its-instrument",
  severity: "stop",
  about: "technique",
  summary:
    "Each step asks for what its verb is done with: a drill to drill, driver, limiter and handle to tighten to a limit, the guide's offset end for a loaded screw and its centred end for any other.",
  why: "What a step does not ask for is missing from its line, and from the trays a case is checked against.",
  fix: "Correct uses and also of the step, or its verb.",
  source: "common practice",
  *check({ catalogue }) {
    for (const recipe of catalogue.recipes.values())
      for (const [index, step] of recipe.steps.entries()) {
        const what = wrong(recipe, step, index);
        if (what !== undefined)
          yield {
            file: recipe.file,
            path: ["steps", index, "uses"],
            message: `Expected step "${step.id}" of ${recipe.name} to ask for ${what}`,
          };
      }
  },
  examples: [
    passes("each step asks for its own", "The pilot hole asks for a pilot drill."),
    fails("a pilot hole with a gliding drill", "drill-pilot asks for a gliding drill.", {
      "recipe/cortical-neutral steps.1.uses.use": "gliding",
    }),
    fails("a neutral screw by the offset end", "Nothing needs travel, the guide's end is offset.", {
      "recipe/cortical-neutral steps.0.uses.end": "offset",
    }),
    fails("another thing taken out than put in", "A sleeve goes in, an insert comes out.", {
      "recipe/locking-through-sleeve steps.3.uses": { kind: "reduction-insert" },
    }),
    fails("tightened to a limit without limiter", "Driver and handle only.", {
      "recipe/locking-through-sleeve steps.6.also": [{ kind: "handle" }],
    }),
  ],
};

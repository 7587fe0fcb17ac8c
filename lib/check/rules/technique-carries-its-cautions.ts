import { type Catalogue, known } from "../../model/catalogue.ts";
import type { Defined } from "../../model/definition.ts";
import type { Danger, Procedure, Recipe, Verb } from "../../model/recipe.ts";
import type { Rule } from "../../model/rule.ts";
import { dangersOf } from "../dangers.ts";
import { fails, passes } from "../example.ts";

function* ofRecipe({ steps }: Recipe): Generator<Danger> {
  for (const { verb } of steps) if (verb !== "final-pass") yield* dangersOf[verb] ?? [];
  const at = (verb: Verb): number => steps.findIndex((step) => step.verb === verb);
  if (at("turn-in-sleeve") >= 0 && at("measure") > at("turn-in-sleeve")) yield "gauge-in-sleeve";
}

function* ofProcedure(catalogue: Catalogue, procedure: Defined<Procedure>): Generator<Danger> {
  const { plates, procedures, screws, cautions } = catalogue;
  for (const { verb, fills } of procedure.steps) {
    if (fills === undefined || verb === "tighten-to-limit") yield* dangersOf[verb] ?? [];
    if (fills && known(screws, fills.screw).class === "locking") yield "power-finish";
  }
  const sided = [...plates.values()].some(
    (plate) =>
      "family" in plate && procedure.families.includes(plate.family) && plate.side !== "none",
  );
  const told = [...procedures.values()].some(
    ({ families, required_cautions }) =>
      families.some((family) => procedure.families.includes(family)) &&
      required_cautions.some((id) => known(cautions, id).against === "wrong-side"),
  );
  if (sided && !told) yield "wrong-side";
}

const less = (id: string, missing: string, all: readonly string[]) => ({
  [`${id} required_cautions`]: all.filter((caution) => caution !== missing),
});
const locking = [
  "no-power",
  "square-sleeve",
  "sleeve-out",
  "plain-first",
  "sharp-drill",
  "read-back",
];

/** A technique requires the caution that belongs to each act in it. */
export const techniqueCarriesItsCautions: Rule = {
  id: "technique-carries-its-cautions",
  severity: "stop",
  about: "technique",
  summary:
    "A technique or procedure requires a caution against what each of its acts can go wrong by: tilted sleeve, gauge in the sleeve, locking first, gliding through, worn drill, misheard length, unseated hooks, wrong side, missed screw.",
  why: "A caution that is not required is the first to go when a card is short of room.",
  fix: "Put the caution into required_cautions; a caution says what it guards against in its field against.",
  source: "common practice",
  needsAll: ["caution", "procedure", "recipe"],
  *check({ catalogue }) {
    const against = (ids: readonly string[]) =>
      new Set(ids.map((id) => known(catalogue.cautions, id).against));
    const asked = [
      ...[...catalogue.recipes.values()].map((one) => [one, [...ofRecipe(one)]] as const),
      ...[...catalogue.procedures.values()].map(
        (one) => [one, [...ofProcedure(catalogue, one)]] as const,
      ),
    ];
    for (const [{ file, required_cautions }, dangers] of asked) {
      const there = against(required_cautions);
      for (const danger of new Set(dangers))
        if (!there.has(danger))
          yield {
            file,
            path: ["required_cautions"],
            message: `Missing the caution against: ${danger.replaceAll("-", " ")}`,
          };
    }
  },
  examples: [
    passes("every caution", "Locking through the sleeve: six acts, six cautions."),
    ...["square-sleeve", "sleeve-out", "plain-first", "sharp-drill", "read-back"].map((caution) =>
      fails(
        `without ${caution}`,
        `Locking through the sleeve, and nothing requires "${caution}": five of six.`,
        less("recipe/locking-through-sleeve", caution, locking),
      ),
    ),
    ...["say-side", "tick-all", "no-power"].map((caution) =>
      fails(
        `a procedure without ${caution}`,
        `Left and right plates, locking screws, a final pass, and nothing requires "${caution}".`,
        less("procedure/lower-fibula", caution, ["say-side", "tick-all", "no-power"]),
      ),
    ),
  ],
};

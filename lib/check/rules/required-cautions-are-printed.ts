import type { Rule, RuleInput } from "../../model/rule.ts";
import type { SheetView } from "../../model/sheet.ts";
import { sampleCase, sampleSteps } from "../sample-sheets.ts";

function required({ catalogue }: RuleInput, sheet: SheetView): readonly string[] {
  const recipe = [...catalogue.recipes.values()].find(({ file }) => file === sheet.origin);
  const procedure = [...catalogue.procedures.values()].find(({ file }) => file === sheet.origin);
  const planned = [...catalogue.cases.values()].find(({ file }) => file === sheet.origin);
  const used =
    planned?.plan.flatMap(({ recipe: id }) => catalogue.recipes.get(id)?.required_cautions ?? []) ??
    [];
  return [
    ...new Set([
      ...(recipe?.required_cautions ?? []),
      ...(procedure?.required_cautions ?? []),
      ...used,
    ]),
  ];
}

function printed(sheet: SheetView): ReadonlySet<string> {
  const atSteps = sheet.kind === "steps" ? sheet.steps.flatMap(({ cautions }) => cautions) : [];
  return new Set([...sheet.cautions, ...atSteps].map(({ id }) => id));
}

/** Each caution a technique or procedure requires is printed on the same page. */
export const requiredCautionsArePrinted: Rule = {
  id: "required-cautions-are-printed",
  severity: "stop",
  about: "sheet",
  summary:
    "Every caution that a technique or procedure requires stands on its own sheet, and on the sheet of each case that uses it.",
  why: "A caution on another page is a caution nobody reads while the screw goes in.",
  fix: "Add the caution to the technique's cautions or to the step it belongs to.",
  source: "common practice",
  *check(input) {
    for (const sheet of input.sheets ?? []) {
      const there = printed(sheet);
      for (const caution of required(input, sheet)) {
        if (!there.has(caution))
          yield {
            file: sheet.origin,
            path: ["required_cautions"],
            message: `Missing on ${sheet.id}: the caution ${caution}`,
          };
      }
    }
  },
  examples: [
    {
      title: "a sheet whose source requires nothing",
      passes: true,
      shows: "No caution is required.",
      edits: [],
      sheets: [sampleSteps()],
    },
    {
      title: "a locking card without its caution",
      passes: false,
      shows: "The technique requires the caution against power; the card does not print it.",
      edits: [],
      sheets: [sampleSteps({ origin: "recipes/locking-through-sleeve.yaml" })],
    },
    {
      title: "a case sheet without its caution",
      passes: false,
      shows: "The case uses a locking screw; its sheet does not print the caution against power.",
      edits: [],
      sheets: [sampleCase({ origin: "cases/case-a.yaml" })],
    },
  ],
};

import { known } from "../../model/catalogue.ts";
import type { Rule, RuleInput } from "../../model/rule.ts";
import { keptOtherwise } from "../kept-otherwise.ts";
import { sampleStep, sampleSteps } from "../sample-sheets.ts";

function* tooFewBoxes({ catalogue, derived, sheets = [] }: RuleInput) {
  for (const { families, file, steps } of catalogue.procedures.values()) {
    const pass = steps.findIndex(
      ({ verb, tally }) => verb === "final-pass" && tally === "locking-screws",
    );
    const familyOf = (id: string): string => {
      const plate = known(catalogue.plates, id);
      return "mirror_of" in plate ? familyOf(plate.mirror_of) : plate.family;
    };
    const plates = derived.plates.filter(({ plate }) => families.includes(familyOf(plate)));
    const most = Math.max(
      0,
      ...plates.map(
        ({ holes }) =>
          holes.filter(({ zones }) => zones.some(({ kind }) => kind === "threaded")).length,
      ),
    );
    for (const sheet of sheets) {
      if (pass < 0 || sheet.kind !== "steps" || sheet.origin !== file) continue;
      const boxes = sheet.steps[pass]?.tally.length ?? 0;
      if (boxes < most)
        yield {
          file,
          path: ["steps", pass, "tally"],
          message: `Expected ${most} boxes on ${sheet.id}, one for each locking screw the plate can take, got ${boxes}`,
        };
    }
  }
}

const card = (boxes: number) =>
  sampleSteps({
    origin: "systems/pebblefin/procedures/lower-fibula.yaml",
    steps: [
      sampleStep,
      sampleStep,
      sampleStep,
      sampleStep,
      sampleStep,
      { ...sampleStep, tally: Array.from({ length: boxes }, (_, box) => String(box + 1)) },
    ],
  });

/** After the last locking screw, every locking screw is tightened again and ticked off. */
export const finalPassCoversEveryLockingScrew: Rule = {
  id: "final-pass-covers-every-locking-screw",
  severity: "stop",
  about: "technique",
  summary:
    "A procedure with locking screws ends them with a pass over all of them, with boxes to tick.",
  why: "Of seven locking screws, the third is the one forgotten; nobody can see which head was never tightened.",
  fix: "After the last locking screw add a step with the verb final-pass and the tally locking-screws.",
  source: "common practice",
  *check(input) {
    yield* tooFewBoxes(input);
    const { catalogue } = input;
    for (const procedure of catalogue.procedures.values()) {
      const { steps, file } = procedure;
      const last = steps.findLastIndex(
        ({ fills }) => fills && known(catalogue.screws, fills.screw).class === "locking",
      );
      if (last < 0) continue;
      const pass = steps.findLastIndex(({ verb }) => verb === "final-pass");
      const severity = keptOtherwise(catalogue, procedure);
      if (pass < last)
        yield {
          file,
          path: ["steps", last],
          severity,
          message: `Missing a final pass over every locking screw after step ${last + 1}`,
        };
      else if (steps[pass]?.tally !== "locking-screws")
        yield {
          file,
          path: ["steps", pass],
          severity,
          message: "Missing the boxes to tick, one for each locking screw (tally: locking-screws)",
        };
    }
  },
  examples: [
    {
      title: "a final pass with boxes",
      passes: true,
      shows: "All locking screws in, then: tighten every one again, tick each.",
      edits: [],
    },
    {
      title: "a box for each hole with a threaded part",
      passes: true,
      shows: "5 holes in the shaft and 2 in the head: 7 boxes.",
      edits: [],
      sheets: [card(7)],
    },
    {
      title: "a box too few",
      passes: false,
      shows: "7 holes with a threaded part, 6 boxes.",
      edits: [],
      sheets: [card(6)],
    },
    {
      title: "no final pass",
      passes: false,
      shows: "The procedure ends with the last locking screw.",
      edits: [
        {
          file: "procedure/lower-fibula",
          path: ["steps"],
          value: [
            {
              id: "locking",
              verb: "drive-screw",
              say: "Put the locking screws in.",
              fills: {
                recipe: "locking-through-sleeve",
                screw: "locking-35",
                zone: "threaded-35",
                region: "shaft",
                repeat: "each-planned",
              },
            },
          ],
        },
      ],
    },
    {
      title: "a final pass without boxes",
      passes: false,
      shows: "Tighten again, with nothing to tick.",
      edits: [
        {
          file: "procedure/lower-fibula",
          path: ["steps"],
          value: [
            {
              id: "locking",
              verb: "drive-screw",
              say: "Put the locking screws in.",
              fills: {
                recipe: "locking-through-sleeve",
                screw: "locking-35",
                zone: "threaded-35",
                region: "shaft",
                repeat: "each-planned",
              },
            },
            { id: "pass", verb: "final-pass", say: "Tighten every locking screw again." },
          ],
        },
      ],
    },
  ],
};

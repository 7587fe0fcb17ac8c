import { known } from "../../model/catalogue.ts";
import type { Rule, RuleInput } from "../../model/rule.ts";
import { keptOtherwise } from "../kept-otherwise.ts";

type Filled = { readonly index: number; readonly screw: string; readonly region: string };

function tooLate(
  { catalogue }: RuleInput,
  fills: readonly Filled[],
): readonly (Filled & { readonly after: string })[] {
  const locking = ({ screw }: Filled): boolean =>
    known(catalogue.screws, screw).class === "locking";
  return fills.flatMap((fill, place) => {
    const earlier = fills.slice(0, place).find((one) => one.region === fill.region && locking(one));
    return earlier && !locking(fill) ? { ...fill, after: earlier.screw } : [];
  });
}

/** In each part of a plate, plain-head screws go in before locking screws. */
export const plainScrewsComeBeforeLocking: Rule = {
  id: "plain-screws-come-before-locking",
  severity: "stop",
  about: "technique",
  summary: "In the head and in the shaft of a plate, no plain-head screw follows a locking screw.",
  why: "A locked plate stands where it stands: a plain-head screw put in later cannot draw it down, and strips.",
  fix: "Put the plain-head screws of that part of the plate first, or cite the section of the instructions for use that orders it otherwise (source, fields, steps).",
  source:
    "AAOS Now, June 2008 (a locking screw does not draw the plate to the bone); the order is common practice",
  *check(input) {
    const { catalogue } = input;
    const words = (screw: string): string => known(catalogue.screws, screw).called;
    for (const procedure of catalogue.procedures.values()) {
      const fills = procedure.steps.flatMap(({ fills: filled }, index) =>
        filled ? { index, screw: filled.screw, region: filled.region } : [],
      );
      for (const { index, screw, region, after } of tooLate(input, fills)) {
        const severity = keptOtherwise(catalogue, procedure);
        yield {
          file: procedure.file,
          path: ["steps", index, "fills"],
          severity,
          message: `Expected ${words(screw)} before ${words(after)} in the ${region}, got it after`,
        };
      }
    }
    for (const planned of catalogue.cases.values()) {
      const plate = input.derived.plates.find(
        (laid) => laid.plate === planned.plate && laid.holesInRow === planned.holes,
      );
      const region = (hole: string): string =>
        plate?.holes.find(({ label }) => label === hole)?.region ?? hole;
      const fills = planned.plan
        .map(({ hole, screw, order }, index) => ({ index, order, screw, region: region(hole) }))
        .sort((a, b) => a.order - b.order);
      for (const { index, screw, after } of tooLate(input, fills)) {
        yield {
          file: planned.file,
          path: ["plan", index, "order"],
          severity: "sign",
          message: `Expected ${words(screw)} before ${words(after)}, got it after`,
        };
      }
    }
  },
  examples: [
    {
      title: "plain-head screw first",
      passes: true,
      shows: "S1 cortical 3.5, then S3 locking 3.5.",
      edits: [],
    },
    {
      title: "locking screw first",
      passes: false,
      shows: "S3 locking 3.5 first, then S1 cortical 3.5: the plate is already held off the bone.",
      edits: [
        {
          file: "case/case-a",
          path: ["plan"],
          value: [
            {
              hole: "S3",
              zone: "threaded-35",
              screw: "locking-35",
              recipe: "locking-through-sleeve",
              order: 1,
            },
            {
              hole: "S1",
              zone: "oblong-35",
              screw: "cortical-35",
              recipe: "cortical-neutral",
              order: 2,
            },
          ],
        },
      ],
    },
  ],
};

import { expect, test } from "vitest";
import { drilledBy } from "../../lib/model/bone-depth.ts";
import { RecipeStep } from "../../lib/model/recipe.ts";

const step = (facts: object): RecipeStep => RecipeStep.parse({ id: "s", say: "Do it.", ...facts });
const gliding = step({ verb: "drill-gliding", near_cortex_only: true });
const insert = step({ verb: "place-insert" });
const through = step({ verb: "drill-pilot" });
const near = step({ verb: "drill-pilot", near_cortex_only: true, decides: "surgeon" });
const decided = step({ verb: "drill-pilot", decides: "surgeon" });
const nearTap = step({ verb: "tap", near_cortex_only: true });
const tap = step({ verb: "tap" });

test.each([
  ["nothing", [], {}],
  ["a guide alone", [step({ verb: "aim-guide" })], {}],
  ["the gliding hole", [gliding, insert], { gliding: true }],
  [
    "both holes of a lag screw",
    [gliding, insert, through, tap],
    { gliding: true, pilot: "both-cortices" },
  ],
  ["the near cortex, though the surgeon decides so", [near], { pilot: "near-cortex" }],
  ["as deep as the surgeon decides", [decided], { pilot: "surgeon-decides" }],
  [
    "a thread in the near cortex",
    [decided, nearTap],
    { pilot: "surgeon-decides", tapped: "near-cortex" },
  ],
] as const)("steps cut into the bone: %s", (_, steps, drilled) => {
  expect(drilledBy(steps)).toEqual(drilled);
});

import { expect, it } from "vitest";
import type { KeptMutation } from "../../lib/model/mutation.ts";
import { mutationPages } from "../../lib/site/pages/mutation-page.ts";
import type { SiteInput } from "../../lib/site/site-input.ts";

const row = { mutants: 8, refused: 2, caught: 5, harmful: 4, harmfulCaught: 3, unknowable: 1 };
const kept: KeptMutation = {
  run: {
    library: "aaaa",
    rules: "bbbb",
    sample: 12,
    rows: [{ kind: "ten-times", ...row }],
    unknowable: [],
  },
  isLibrary: true,
  areRules: true,
};
const text = (mutation: KeptMutation): string =>
  JSON.stringify(mutationPages({ mutation } as SiteInput));

it("tells counts with their denominators and what they were measured on", () => {
  expect(text(kept)).toContain("7 of 8 caught (87.5 %), 2 of them by a schema");
  expect(text(kept)).toContain("3 of 4 caught by rules (75.0 %)");
  expect(text(kept)).toContain("one mutant in 12 of each kind");
  expect(text(kept)).toContain("Both are those of this site.");
});

it("says when the library or the rules are newer than the counts", () => {
  expect(text({ ...kept, isLibrary: false })).toContain("this library is another or has changed");
  expect(text({ ...kept, areRules: false })).toContain("rules have changed since");
});

it("makes no page where no run is kept", () => {
  expect(mutationPages({} as SiteInput)).toEqual([]);
});

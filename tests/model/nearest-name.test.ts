import { expect, test } from "vitest";
import { nearestName, suggestion } from "../../lib/model/nearest-name.ts";

test.each([
  ["a letter too many", "bbore", ["bore", "major"], "bore"],
  ["a letter too few", "bor", ["major", "bore"], "bore"],
  ["two letters that changed places", "pliot", ["tip", "pilot"], "pilot"],
  ["capitals", "TH-35", ["th-27", "th-35"], "th-35"],
  ["nothing near", "colour", ["bore", "major"], undefined],
  ["nothing known", "bore", [], undefined],
])("%s", (_, name, known, meant) => {
  expect(nearestName(name, known)).toBe(meant);
});

test("two names that are equally near are both named: a swapped digit or a mistyped one", () => {
  expect(suggestion("th-53", ["th-27", "th-35", "th-50"])).toBe(
    'Did you mean "th-35" or "th-50"? Known: th-27, th-35, th-50.',
  );
});

test("of many names the nearest twelve are listed, in the order given", () => {
  const known = Array.from({ length: 14 }, (_, index) => `drill-${"x".repeat(14 - index)}`);
  expect(suggestion("drill-", known, "drills")).toBe(
    `Did you mean "drill-x"? Known drills: ${known.slice(2).join(", ")}, and 2 more.`,
  );
});

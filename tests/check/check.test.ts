import { expect, it } from "vitest";
import { check } from "../../lib/check/check.ts";
import type { Breach, Rule, RuleInput } from "../../lib/model/rule.ts";
import { editedLibrary } from "./edited-library.ts";

const rule = (id: string, breaches: readonly Breach[]): Rule => ({
  id,
  severity: "stop",
  about: "words",
  summary: "It is.",
  why: "So.",
  fix: "Do.",
  source: "common practice",
  examples: [],
  check: () => breaches,
});
const input = { catalogue: editedLibrary([]) } as RuleInput;

it("orders findings by file, path and rule, by code unit", () => {
  const b = rule("b", [
    { file: "z.yaml", path: [], message: "1" },
    { file: "a.yaml", path: ["y"], message: "2" },
  ]);
  const a = rule("a", [
    { file: "a.yaml", path: ["y"], message: "3" },
    { file: "a.yaml", path: ["x"], message: "4" },
    { file: "Z.yaml", path: [], message: "5" },
  ]);
  expect(check(input, [b, a]).map(({ message }) => message)).toEqual(["5", "4", "3", "2", "1"]);
});

it("says the same thing of the same place once", () => {
  const twice = rule("a", [
    { file: "a.yaml", path: ["x", 0], message: "same" },
    { file: "a.yaml", path: ["x", 0], message: "same" },
    { file: "a.yaml", path: ["x", 1], message: "same" },
  ]);
  expect(check(input, [twice])).toHaveLength(2);
});

it("takes severity and fix from the rule unless the breach has its own", () => {
  const own = rule("a", [
    { file: "a.yaml", path: [], message: "m" },
    { file: "b.yaml", path: [], message: "m", severity: "note", fix: "Other." },
  ]);
  expect(check(input, [own]).map(({ severity, fix, why }) => [severity, fix, why])).toEqual([
    ["stop", "Do.", "So."],
    ["note", "Other.", "So."],
  ]);
});

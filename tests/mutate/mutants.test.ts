import { expect, it } from "vitest";
import type { SourceFile } from "../../lib/model/source-file.ts";
import { type Fields, mutants } from "../../lib/mutate/mutants.ts";
import { replaced } from "../../lib/mutate/replaced.ts";

const fields: Fields = {
  unit: (path) => (path.includes("quantity") || path.includes("generation") ? "count" : "mm"),
  choices: (path) => (path.at(-1) === "side" ? ["left", "right", "none"] : []),
  isOptional: (path) => path.at(-1) === "note",
  references: [],
};
const source = (data: unknown): SourceFile => ({
  file: "a.yaml",
  kind: "plate",
  id: "a",
  system: "pebblefin",
  data,
});
const said = (data: unknown, kind: string, more: Partial<Fields> = {}): readonly string[] =>
  mutants(source(data), { ...fields, ...more })
    .filter((mutant) => mutant.kind === kind)
    .map(({ path, says }) => `${path.join(".")}: ${says}`);

it.each([
  ["ten-times", ["bore: 2.7 becomes 27"]],
  ["a-tenth", ["bore: 2.7 becomes 0.27"]],
  ["inch-times", ["bore: 2.7 becomes 68.58"]],
  ["inch-over", ["bore: 2.7 becomes 0.1063"]],
  ["tenth-more", ["bore: 2.7 becomes 2.8"]],
  ["fifth-less", ["bore: 2.7 becomes 2.5"]],
])("slips a length by one kind of slip at a time (%s)", (kind, expected) => {
  expect(said({ bore: 2.7 }, kind)).toEqual(expected);
});

it("keeps a count whole, and knows a generation by its name", () => {
  expect(said({ quantity: 4 }, "a-tenth")).toEqual([]);
  expect(said({ quantity: 4 }, "one-less")).toEqual(["quantity: 4 becomes 3"]);
  expect(said({ generation: 2 }, "generation")).toEqual([
    "generation: 2 becomes 3",
    "generation: 2 becomes 1",
  ]);
});

it("removes each entry of a list once and swaps each pair of neighbours that differ", () => {
  const data = { steps: ["a", "b", "b"], cautions: ["c"] };
  expect(said(data, "step-removed")).toHaveLength(3);
  expect(said(data, "caution-removed")).toEqual(['cautions: without "c"']);
  expect(said(data, "order")).toEqual(['steps: "b" before "a"']);
});

it("flips a side to the others that its field takes", () => {
  expect(said({ side: "left", word: "left" }, "flip")).toEqual([
    "side: left becomes right",
    "side: left becomes none",
  ]);
});

it("swaps a reference to every other candidate", () => {
  const references = [{ path: ["zone"], id: "a", candidates: ["a", "b", "c"] }];
  expect(said({ zone: "a" }, "reference", { references })).toEqual([
    "zone: a becomes b",
    "zone: a becomes c",
  ]);
});

it("takes away optional facts and the file as a whole, never a needed fact", () => {
  expect(said({ note: "n", bore: 1 }, "fact-removed")).toEqual(["note: without note"]);
  expect(said({ bore: 1 }, "part-removed")).toEqual([": without this file"]);
});

it("makes the same mutants in the same order whenever it is asked", () => {
  const data = { steps: [{ bore: 2 }, { bore: 3 }], side: "left" };
  expect(mutants(source(data), fields)).toEqual(mutants(source(data), fields));
});

it("replaces one value and shares the rest", () => {
  const data = { a: [1, { b: 2 }], c: { d: 3 } };
  const changed = replaced(data, ["a", 1, "b"], 4) as typeof data;
  expect(changed).toEqual({ a: [1, { b: 4 }], c: { d: 3 } });
  expect(changed.c).toBe(data.c);
  expect(replaced(data, ["c", "d"], undefined)).toEqual({ a: [1, { b: 2 }], c: {} });
  expect(data).toEqual({ a: [1, { b: 2 }], c: { d: 3 } });
});

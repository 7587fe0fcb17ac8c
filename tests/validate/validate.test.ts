import { describe, expect, test } from "vitest";
import { bareSchema } from "../../lib/model/bare-schema.ts";
import { definitions } from "../../lib/model/definition.ts";
import { asNumber, slips } from "../../lib/validate/number-words.ts";
import { schemaAt } from "../../lib/validate/schema-at.ts";
import { validate } from "../../lib/validate/validate.ts";

const term = { term: "sleeve", means: "A tube." };
const source = (id: string, file: string, data: unknown = term) => ({
  file,
  kind: "term" as const,
  id,
  system: "general",
  data,
});
const major = schemaAt(definitions.screw.schema, ["major"], {});
const told = (...sources: ReturnType<typeof source>[]) =>
  validate(sources).findings.map(({ rule, message }) => `${rule}: ${message}`);

test("a valid definition is frozen and carries its identity", () => {
  const { definitions: found } = validate([source("sleeve", "glossary/sleeve.yaml")]);
  expect(found.term.get("sleeve")).toEqual({
    ...term,
    id: "sleeve",
    system: "general",
    file: "glossary/sleeve.yaml",
  });
  expect(Object.isFrozen(found.term.get("sleeve"))).toBe(true);
});

describe("an id is its file's name", () => {
  test.each(["Sleeve", "a b", "a--b", "-a", "con", "lpt1", "ä", "x".repeat(65), "..", "q?x#y"])(
    "%s is refused",
    (id) => {
      expect(told(source(id, `glossary/${id}.yaml`))).toEqual([
        `id-is-its-file-name: Expected a file name of a-z, 0-9 and single hyphens, got "${id}"`,
      ]);
    },
  );
  test("a folder of a system is named alike, and its cure is told", () => {
    const told = (system: string) =>
      validate([{ ...source("sleeve", "x.yaml"), system }]).findings.map(
        ({ message, fix }) => `${message} ${fix}`,
      );
    expect(told("Pebble Fin")).toEqual([
      'Expected a folder name of a-z, 0-9 and single hyphens, got "Pebble Fin" Rename the folder to pebble-fin.',
    ]);
    expect([told("pebble-fin"), told("general")]).toEqual([[], []]);
  });
  test("two files with one id, or ids that differ in case only, are refused", () => {
    expect(told(source("a", "glossary/a.yaml"), source("a", "more/a.yaml"))).toEqual([
      'id-is-unique: Duplicate term id "a" (first at glossary/a.yaml:1)',
    ]);
    expect(told(source("a", "glossary/a.yaml"), source("A", "glossary/A.yaml"))).toHaveLength(2);
  });
});

test("a document keeps the system it states", () => {
  const data = { title: "t", kind: "drawing", issue: "A", date: "2026-01-01", system: "minnow" };
  const { definitions: found } = validate([
    { file: "documents/d.yaml", kind: "document", id: "d", system: "general", data },
  ]);
  expect(found.document.get("d")?.system).toBe("minnow");
});

test("a definition that only has unknown keys is still given to later stages", () => {
  const { definitions: found, findings } = validate([
    source("a", "glossary/a.yaml", { ...term, colour: "blue" }),
  ]);
  expect([findings.length, found.term.has("a"), found.refused.size]).toEqual([1, true, 0]);
});

test("a definition that is refused keeps its id", () => {
  const { definitions: found } = validate([source("a", "glossary/a.yaml", { term: "x" })]);
  expect([found.term.size, [...found.refused.keys()]]).toEqual([0, ["term/a"]]);
});

describe("a number as text is told as it should be written", () => {
  test.each([
    ["3.5 mm", "Write 3.5"],
    ["3.5 cm", "Write 35"],
    ["0.25 in", "Write 6.35"],
    ["3,5", "Write 3.5"],
    ["3.5", "Write 3.5"],
  ])("%s", (text, says) => {
    expect(asNumber(text, major)).toBe(`${says}, without quotes or unit: the unit is always mm.`);
  });
  test.each(["wide", "3.5 furlongs", "3 4"])("%s is no number", (text) => {
    expect(asNumber(text, major)).toBe("");
  });
});

describe("a number out of range is told what it may have been", () => {
  test.each([
    [35, "3.5 would be in range: did the decimal point slip?"],
    [0.35, "3.5 would be in range: were these centimetres"],
    [0.138, "3.505 would be in range: were these inches?"],
    [88.9, "3.5 would be in range: was it converted from inches twice?"],
  ])("%d", (value, says) => {
    expect(slips(value, major)).toContain(says);
  });
  test("a thousand times off is nothing known", () => {
    expect(slips(3500, major)).toBe("");
  });
});

test("every field of every kind leads to a schema that is bare of its wrapping", () => {
  for (const { schema } of Object.values(definitions))
    expect(bareSchema(bareSchema(schema))).toBe(bareSchema(schema));
  expect(
    schemaAt(definitions.tray.schema, ["slots", 0, "at", 1], { slots: [{ holds: "rack" }] })?._zod
      .def.type,
  ).toBe("number");
});

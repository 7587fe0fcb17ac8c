import { describe, expect, test } from "vitest";
import { sortsOf, startingText } from "../../lib/begin/starting-text.ts";
import { type DefinitionKind, definitions } from "../../lib/model/definition.ts";
import { parseYaml } from "../../lib/read/parse-yaml.ts";
import { validateData } from "../../lib/validate/validate-data.ts";

const kinds = Object.keys(definitions) as DefinitionKind[];
const all = kinds.flatMap((kind): [DefinitionKind, string | undefined][] =>
  sortsOf(kind).length > 0 ? sortsOf(kind).map((sort) => [kind, sort]) : [[kind, undefined]],
);

describe("a file to start from reads and validates", () => {
  test.each(all)("%s %s", (kind, sort) => {
    const { data, findings } = parseYaml(
      "new.yaml",
      new TextEncoder().encode(startingText(kind, "schema.json", sort)),
    );
    expect(findings).toEqual([]);
    expect(validateData(kind, data).told).toEqual([]);
    if (sort) expect(data).toMatchObject({ kind: sort });
  });
});

test("every key that may be left out stands there as a comment that says so", () => {
  expect(startingText("zone", "schema.json", "threaded")).toContain(
    "# Allowed tilt either way; 0 is a fixed axis, °, 0 to 30. May be left out.\n# cone: 1\n",
  );
});

test.each(all)("every line of %s %s that may be taken in holds a value", (kind, sort) => {
  expect(startingText(kind, "schema.json", sort)).not.toMatch(/undefined|null/);
});

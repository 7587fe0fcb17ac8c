import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import type { DefinitionKind } from "../../lib/model/definition.ts";
import { locateIn } from "../../lib/read/locate.ts";
import { parseYaml } from "../../lib/read/parse-yaml.ts";
import { validate } from "../../lib/validate/validate.ts";
import { readExpected } from "./read-expected.ts";

const folder = new URL("definitions/", import.meta.url);

/** The file's name is its kind and what is broken: "zone--unknown-kind.yaml". */
function said(file: string): string[] {
  const { data, findings, source } = parseYaml(file, readFileSync(new URL(file, folder)));
  const kind = file.split("--")[0] as DefinitionKind;
  const judged =
    findings.length > 0
      ? findings
      : validate([{ file, kind, id: file.slice(0, -5), system: "general", data }]).findings.filter(
          ({ rule }) => rule !== "id-is-its-file-name",
        );
  return judged
    .map(locateIn(new Map([[file, source]])))
    .map(({ line, column, rule, message }) => `${line}:${column} ${rule}: ${message}`);
}

test.each(readdirSync(folder))(
  "%s is refused for what stands under its lines, and for nothing else",
  (file) => {
    const expected = readExpected(readFileSync(new URL(file, folder), "utf8")).map(
      ({ line, column, rule, message }) => `${line}:${column} ${rule}: ${message}`,
    );
    expect(expected.length).toBeGreaterThan(0);
    expect(said(file).sort()).toEqual(expected.sort());
  },
);

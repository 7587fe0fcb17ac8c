import { symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { ownLibrary, trayleaf } from "./run-cli.ts";

/** Files no honest author writes, and the place and rule each is refused with. */
const files: readonly (readonly [string, string | Uint8Array, string])[] = [
  [
    "glossary/alias.yaml",
    "term: &a word\nmeans: *a\n",
    "glossary/alias.yaml:2:8  STOP  Expected the value itself, got the alias",
  ],
  [
    "glossary/deep.yaml",
    `term: ${"[".repeat(5000)}\n`,
    "glossary/deep.yaml:1:39  STOP  Too many levels: expected at most 32",
  ],
  [
    "glossary/bidi.yaml",
    "term: word\nmeans: turn\u202Eleft\n",
    "glossary/bidi.yaml:2:12  STOP  Expected visible characters, got a direction mark (U+202E)",
  ],
  [
    "glossary/latin.yaml",
    Buffer.from("term: word\nmeans: \xD8 3.5\n", "latin1"),
    "glossary/latin.yaml:2:8  STOP  Expected UTF-8 text",
  ],
  [
    "glossary/large.yaml",
    `term: ${"x".repeat(1024 * 1024)}\n`,
    "glossary/large.yaml:1:1  STOP  Too many bytes: expected at most 1048576",
  ],
  [
    "documents/elsewhere.yaml",
    "title: t\nkind: drawing\nissue: A\ndate: 2026-01-01\nsystem: ../../etc\n",
    'documents/elsewhere.yaml:5:9  STOP  Expected an id of a-z, 0-9 and single hyphens, got "../../etc"',
  ],
  [
    "glossary/con.yaml",
    "term: word\nmeans: meaning\n",
    'glossary/con.yaml:1:1  STOP  Expected a file name of a-z, 0-9 and single hyphens, got "con"',
  ],
  ["glosary.yaml", "term: word\n", 'glosary.yaml:1:1  STOP  Unknown file or folder "glosary.yaml"'],
];

test("hostile files are refused one by one, and all in one run", () => {
  const library = ownLibrary();
  for (const [file, content] of files) writeFileSync(join(library, file), content);
  symlinkSync(join(library, "publisher.yaml"), join(library, "glossary/link.yaml"));
  const { code, out, error } = trayleaf(["check", "--library", library]);
  const told = out.replaceAll(`${library}/`, "");
  expect({ code, error }).toEqual({ code: 1, error: "" });
  expect(files.map(([, , said]) => said).filter((said) => !told.includes(said))).toEqual([]);
  expect(told).toContain(
    "glossary/link.yaml:1:1  STOP  Expected a plain file, got a symbolic link",
  );
  expect(told).toContain("glossary/alias.yaml:1:7  STOP  Expected no anchor");
  expect(told).toContain(`${files.length + 2} stops`);
}, 60_000);

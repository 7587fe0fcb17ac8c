import { describe, expect, test } from "vitest";
import { parseYaml } from "../../lib/read/parse-yaml.ts";
import { runs } from "../fixtures/runs.ts";
import { readText, refusals } from "./read-text.ts";

const bytes = (...values: number[]): Uint8Array => Uint8Array.from(values);

describe("YAML text is refused with the rule and the place", () => {
  test.each([
    [
      "an alias and its anchor",
      "a: &x 1\nb: *x\n",
      ["yaml-has-no-aliases 1:4", "yaml-has-no-aliases 2:4"],
    ],
    ["a merge key", "<<: {a: 1}\n", ["yaml-has-no-merge-keys 1:1"]],
    ["a tag", "a: !!str 2.5\n", ["yaml-has-no-tags 1:4"]],
    ["a directive", "%YAML 1.1\n---\na: no\n", ["yaml-has-no-directives 1:1"]],
    ["two documents", "a: 1\n---\nb: 2\n", ["yaml-is-one-document 2:1"]],
    ["an empty file", "# nothing\n", ["yaml-is-not-empty 1:1"]],
    ["a duplicate key", "a: 1\nb: 2\na: 3\n", ["yaml-keys-are-unique 3:1"]],
    [
      "a duplicate key once as number, once as text",
      '1: a\n"1": b\n',
      ["yaml-keys-are-unique 2:1"],
    ],
    ["a key of the program's own", "a:\n  __proto__: 1\n", ["yaml-keys-are-plain 2:3"]],
    ["a key that is a list", "? [a]\n: 1\n", ["yaml-keys-are-plain 1:3"]],
    ["broken indentation", "a:\n\tb: 1\n", ["yaml-is-well-formed 2:1"]],
    [
      "text cut by a comment, but not a number with one",
      "note: use #4 drill\nsize: 4 # mm\n",
      ["yaml-text-is-not-cut-by-a-comment 1:7"],
    ],
    ["curly quotes", "mark: \u201c3.5\u201d\n", ["yaml-quotes-are-straight 1:7"]],
    ["a direction mark", "a: b\nnote: turn\u202Ethis\n", ["text-has-no-hidden-characters 2:11"]],
    ["a NUL", "a: b\u0000\n", ["text-has-no-hidden-characters 1:5"]],
    ["a zero-width space in a key", "a\u200Bb: 1\n", ["text-has-no-hidden-characters 1:2"]],
    ["a direction mark as an escape", 'a: "x\\u202Ey"\n', ["text-has-no-hidden-characters 1:4"]],
    ["half a character as an escape", 'a: "x\\uD800y"\n', ["text-has-no-hidden-characters 1:4"]],
    ["a line end of old computers", "a: 1\rb: 2\n", ["text-has-no-hidden-characters 1:5"]],
    ["a text of 2,001 characters", `a: ${"x".repeat(2001)}\n`, ["yaml-is-not-long 1:4"]],
    [
      "2,001 keys",
      Array.from({ length: 2001 }, (_, index) => `k${index}: 1\n`).join(""),
      ["yaml-is-not-long 1:1"],
    ],
  ])("%s", (_, text, expected) => {
    expect(refusals(readText(text))).toEqual(expected);
  });
});

test.each([
  ".nan",
  ".inf",
  "1e3",
  "1e309",
  "-0",
  "017",
  "0o17",
  "0x1F",
  "+3.5",
  "3.",
  "2.12345",
  "9007199254740993e0",
  "3,5",
])("the number %s is refused", (number) => {
  expect(refusals(readText(`a: ${number}\n`))).toEqual(["yaml-numbers-are-plain-decimals 1:4"]);
});

test("two numbers in a list with no space after the comma are taken for a decimal comma", () => {
  expect(refusals(readText("at: [3,5]\n"))).toEqual(["yaml-numbers-are-plain-decimals 1:6"]);
  expect(readText("at: [3, 5]\n").data).toEqual({ at: [3, 5] });
});

test.each([
  ["3.5", 3.5],
  ["-30", -30],
  ["0.05", 0.05],
  ["10", 10],
  ["0", 0],
])("the number %s is read", (text, value) => {
  expect(readText(`a: ${text}\n`).data).toEqual({ a: value });
});

test.each(["no", "off", "1:30", "1/2", "1_000"])("%s stays text", (text) => {
  expect(readText(`a: ${text}\n`).data).toEqual({ a: text });
});

test("a byte order mark and CRLF line ends change nothing", () => {
  const plain = readText("a: 1\nb: [2]\n");
  const other = parseYaml("file.yaml", new TextEncoder().encode("\uFEFFa: 1\r\nb: [2]\r\n"));
  expect(other.data).toEqual(plain.data);
  expect(other.source.lines).toEqual(plain.source.lines);
});

test.each([
  [
    "Latin-1",
    bytes(0x61, 0x3a, 0x20, 0x78, 0x0a, 0x62, 0x3a, 0x20, 0xd8, 0x0a),
    "text-is-utf-8 2:4",
  ],
  ["UTF-16", bytes(0xff, 0xfe, 0x61, 0x00), "text-is-utf-8 1:1"],
])("%s is refused at its first foreign byte", (_, file, expected) => {
  expect(refusals(parseYaml("file.yaml", file))).toEqual([expected]);
});

describe("deep nesting never stops the program", () => {
  const shapes: readonly ((depth: number) => string)[] = [
    (depth) => `a: ${"[".repeat(depth)}`,
    (depth) => `a: ${"[".repeat(depth)}${"]".repeat(depth)}\n`,
    (depth) => `${"- ".repeat(depth)}x\n`,
    (depth) => `${"? ".repeat(depth)}x\n`,
    (depth) => `a: ${"{a: ".repeat(depth)}1${"}".repeat(depth)}\n`,
    (depth) =>
      Array.from({ length: Math.min(depth, 600) }, (_, level) => `${" ".repeat(level)}a:\n`).join(
        "",
      ),
  ];
  const many = runs(500);
  test(`${many} deep documents are refused in one process`, () => {
    const depths = [33, 40, 64, 100, 900, 2000, 5000];
    const results = Array.from({ length: many }, (_, index) => {
      const shape = shapes[index % shapes.length] as (depth: number) => string;
      return readText(shape(depths[index % depths.length] ?? 33)).findings.map(({ rule }) => rule);
    });
    expect(
      results.filter((rules) => rules.length === 1 && rules[0] === "yaml-is-not-deep"),
    ).toHaveLength(many);
  });
  test("what honest definitions need is read", () => {
    expect(readText("a: {b: {c: {d: [[[[1]]]]}}}\n").data).toEqual({
      a: { b: { c: { d: [[[[1]]]] } } },
    });
  });
});

test("all refusals of a file are named in one run", () => {
  expect(refusals(readText("a: &x 1e3\nb: !t 017\nnote: x # y\n"))).toEqual([
    "yaml-has-no-aliases 1:4",
    "yaml-numbers-are-plain-decimals 1:7",
    "yaml-has-no-tags 2:4",
    "yaml-text-is-not-cut-by-a-comment 3:7",
  ]);
});

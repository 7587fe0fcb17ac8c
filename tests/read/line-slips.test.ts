import { expect, test } from "vitest";
import { readText } from "./read-text.ts";

const said = (text: string): string[] =>
  readText(text).findings.map(({ place, message }) => `${place.line}:${place.column} ${message}`);
const column = (expected: number, got: number): string =>
  `Expected this line to begin at column ${expected}, as the one before it does, got column ${got}`;

test.each([
  ["a line too far in", "pitch: 1.1\n  pilot: 2.7\n", [`2:3 ${column(1, 3)}`]],
  ["a key of a key a space too far in", "source:\n  a: x\n   b: y\n", [`3:4 ${column(3, 4)}`]],
  [
    "a key of a list's entry under its hyphen",
    "plan:\n  - a: 1\n     b: 2\n",
    [`3:6 ${column(5, 6)}`],
  ],
  ["hyphens of one list at two columns", "x:\n- {a: 1}\n  - {a: 2}\n", [`3:3 ${column(1, 3)}`]],
  ["a tab", "source:\n\ta: x\n", ["2:1 Expected spaces before the first word, got a tab"]],
  [
    "a tab behind spaces",
    "source:\n  a: x\n \tb: y\n",
    ["3:2 Expected spaces before the first word, got a tab"],
  ],
  [
    "no space after a colon",
    "pitch: 1.1\npilot:2.7\n",
    ["2:6 Expected a space after the colon, got none"],
  ],
  [
    "no space after a hyphen",
    "x:\n  -{a: 1}\n  - {a: 2}\n",
    ["2:3 Expected a space after the hyphen, got none"],
  ],
  [
    "a colon in text",
    "called: Screw: locking\n",
    ["1:9 Expected text that holds a colon in quotes"],
  ],
  [
    "a brace that stays open",
    "x:\n  - {a: 1, b: 2\n  - {a: 1, b: 2}\ny: 1\n",
    ["2:5 Missing closing }"],
  ],
  ["a quote mark that stays open", 'a: "x\nb: 1\nc: 2\n', ['1:4 Missing closing "']],
  [
    "an unfinished merge",
    "a: 1\n<<<<<<< ours\nb: 1\n=======\nb: 2\n>>>>>>> theirs\n",
    [2, 4, 6].map(
      (line) => `${line}:1 Expected one version of the text, got the mark of an unfinished merge`,
    ),
  ],
  [
    "two slips far apart",
    "pilot:2.7\na: 1\nb: 2\nc: 3\nd: Screw: 3\n",
    [
      "1:6 Expected a space after the colon, got none",
      "5:4 Expected text that holds a colon in quotes",
    ],
  ],
])(
  "%s is told where it is, in plain words, and nothing that follows from it",
  (_, text, expected) => {
    expect(said(text)).toEqual(expected);
  },
);

test("what is no common slip is told as the parser says it, once", () => {
  expect(said("a: @x\nb: @y\n")).toEqual([
    expect.stringMatching(/^1:4 Expected well-formed YAML: /),
  ]);
});

test.each([
  ["text that runs over lines", "note: >\n  Turn it: clockwise.\n  http://a\nb: 1\n"],
  ["a list that runs over lines", "at: [1,\n  2]\nb: 1\n"],
  ["a comment further in", "a: 1\n    # pilot:2.7\nb: 2\n"],
  ["a list at the column of its key", "a:\n- x\n- y\nb: 2\n"],
])("%s is no slip", (_, text) => {
  expect(said(text)).toEqual([]);
});

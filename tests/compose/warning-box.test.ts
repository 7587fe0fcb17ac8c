import { describe, expect, test } from "vitest";
import { linesOf, warningBox } from "../../lib/compose/warning-box.ts";

const room = { lines: 3, width: 100, size: 5 };
const line = (words: string) => ({ subject: "", words });

describe("a warning box", () => {
  test.each([
    ["shows everything that fits and promises nothing", ["One.", "Two."], ["One.", "Two."]],
    [
      "keeps the first lines and counts the rest",
      ["One.", "x".repeat(70), "Three."],
      ["One.", "2 more"],
    ],
    ["only counts when even the first line is too long", ["x".repeat(200), "Two."], ["2 more"]],
    ["is empty without lines", [], []],
  ])("%s", (_title, ranked, lines) => {
    const shown = warningBox("Wrong.", ranked.map(line), room).lines;
    expect(shown.map(({ subject, words }) => subject || words)).toEqual(lines);
  });

  test.each([
    ["", 1],
    ["x".repeat(43), 1],
    ["x".repeat(44), 2],
    ["x".repeat(87), 3],
  ])("estimates the printed lines of %s", (words, lines) => {
    expect(linesOf(words, 100, 5)).toBe(lines);
  });
});

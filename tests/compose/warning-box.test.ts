import { describe, expect, test } from "vitest";
import { linesOf } from "../../lib/compose/printed-lines.ts";
import { warningBox } from "../../lib/compose/warning-box.ts";

const measured = { textWidth: (text: string, size: number) => text.length * 0.5 * size };
const room = { lines: 3, width: 100, size: 5 };
const line = (words: string) => ({ subject: "", words });

describe("a warning box", () => {
  test.each([
    ["shows everything that fits and promises nothing", ["One.", "Two."], ["One.", "Two."]],
    [
      "keeps the first lines and counts the rest",
      ["One.", "x ".repeat(35), "Three."],
      ["One."],
      "2 more on the site.",
    ],
    [
      "uses every line that it has",
      ["One.", "Two.", "Three."],
      ["One.", "Two."],
      "1 more on the site.",
    ],
    [
      "only counts when even the first line is too long",
      ["x ".repeat(100), "Two."],
      [],
      "2 more on the site.",
    ],
    ["is empty without lines", [], []],
  ])("%s", (_title, ranked, lines, more?: string) => {
    const box = warningBox(measured, "Wrong.", ranked.map(line), room);
    expect(box.lines.map(({ words }) => words)).toEqual(lines);
    expect(box.more).toBe(more);
    expect([...box.lines, ...(box.rest ?? [])].map(({ words }) => words)).toEqual(ranked);
  });

  test("takes a name apart only where it is wider than the box", () => {
    const name = (letters: number) => `${"x".repeat(letters)}\u00a03.5`;
    const words = (letters: number) =>
      warningBox(measured, "Wrong.", [line(`in ${name(letters)}`)], room).lines[0]?.words;
    expect(words(34)).toBe(`in ${name(34)}`);
    expect(words(35)).toBe(`in ${"x".repeat(35)} 3.5`);
  });

  test.each([
    ["", "", 1],
    ["x".repeat(40), "", 1],
    ["x".repeat(30), "y".repeat(9), 1],
    ["x".repeat(30), "y".repeat(10), 2],
    ["x".repeat(30), `${"y".repeat(38)} z`, 3],
    ["x ".repeat(39), "", 2],
  ])("breaks %s %s at spaces, later lines indented", (subject, words, lines) => {
    const column = { width: 100, size: 5, hang: 5 };
    expect(linesOf(measured, [{ text: subject, weight: 700 }, { text: words }], column)).toBe(
      lines,
    );
  });
});

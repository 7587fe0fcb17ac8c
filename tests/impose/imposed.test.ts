import { readFileSync } from "node:fs";
import { PDFDocument } from "@cantoo/pdf-lib";
import { describe, expect, test } from "vitest";
import { cellGrid } from "../../lib/impose/cell-grid.ts";
import { imposed } from "../../lib/impose/imposed.ts";

const card = [85.6, 53.98] as const;
const font = readFileSync(
  "node_modules/@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-400-normal.woff",
);

async function face(): Promise<Uint8Array> {
  const pdf = await PDFDocument.create({ updateMetadata: false });
  pdf.addPage([242.6, 153]).drawRectangle({ x: 10, y: 10, width: 20, height: 20 });
  return pdf.save();
}

describe("the cells of a paper", () => {
  test.each([
    ["ID-1 on A4", [210, 297], card, 8],
    ["ID-1 on Letter", [215.9, 279.4], card, 8],
    ["A6 on A4", [210, 297], [105, 148], 1],
    ["a card larger than the paper", [100, 100], [200, 200], 1],
  ] as const)("hold %s", (_title, paper, size, count) => {
    expect(cellGrid(paper, size)).toHaveLength(count);
  });

  test("leave 9 mm around for crop marks and slug line", () => {
    for (const { x, y } of cellGrid([210, 297], card)) {
      expect(x).toBeGreaterThanOrEqual(9);
      expect(y).toBeGreaterThanOrEqual(9);
      expect(x + card[0]).toBeLessThanOrEqual(201);
      expect(y + card[1]).toBeLessThanOrEqual(288);
    }
  });
});

describe("an imposed sheet", () => {
  const job = {
    title: "t",
    paper: [210, 297],
    card,
    slug: "PF-1",
    font,
    day: "2026-10-01",
  } as const;

  test("has a side for the fronts and one for the backs, on the paper's size, the same bytes twice", async () => {
    const [front, back] = [await face(), await face()];
    const made = await imposed({ ...job, front, back, offset: [0.5, 0] });
    const again = await imposed({ ...job, front, back, offset: [0.5, 0] });
    expect(Buffer.compare(Buffer.from(made), Buffer.from(again))).toBe(0);
    const read = await PDFDocument.load(made, { updateMetadata: false });
    expect(read.getPageCount()).toBe(2);
    expect(read.getPage(0).getWidth()).toBeCloseTo((210 * 72) / 25.4, 3);
    expect(read.getSubject()).toBe("PF-1");
  });

  test("moves only the backs by the offset", async () => {
    const [front, back] = [await face(), await face()];
    const moved = await imposed({ ...job, front, back, offset: [0.5, 0] });
    const straight = await imposed({ ...job, front, back, offset: [0, 0] });
    expect(Buffer.compare(Buffer.from(moved), Buffer.from(straight))).not.toBe(0);
    const [one, two] = [
      await imposed({ ...job, front, offset: [0.5, 0] }),
      await imposed({ ...job, front, offset: [0, 0] }),
    ];
    expect(Buffer.compare(Buffer.from(one), Buffer.from(two))).toBe(0);
  });
});

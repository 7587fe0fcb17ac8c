import { readFileSync } from "node:fs";
import { PDFDocument } from "@cantoo/pdf-lib";
import { describe, expect, test } from "vitest";
import { cellGrid } from "../../lib/impose/cell-grid.ts";
import { imposed } from "../../lib/impose/imposed.ts";
import { printShop } from "../../lib/impose/print-shop.ts";
import { twoUp } from "../../lib/impose/two-up.ts";
import { pathsOf } from "../print/paths-of.ts";
import { readWithPdfjs } from "../print/read-with-pdfjs.ts";

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

const boxOf = ({ x, y, width, height }: { x: number; y: number; width: number; height: number }) =>
  [x, y, width, height].map((side) => Math.round((side * 25.4 * 100) / 72) / 100);

const roundedPaths = async (pdf: Uint8Array) =>
  (await pathsOf(pdf)).map((box) => box.map((side) => Math.round(side * 100) / 100));

describe("cards for the print shop", () => {
  const poster = {
    card: [594, 420],
    bleed: 3,
    margin: 14,
    slug: "PF-1 · issue B",
  } as const;
  const laminated = { ...poster, card: [297, 210], margin: 8, film: 3 } as const;
  const job = { title: "t", subject: "PF-1", font, day: "2026-10-01" };

  test("say where each is cut, how far it bleeds and where its clear edge ends, the same bytes twice", async () => {
    const faces = [
      { ...poster, pdf: await face() },
      { ...laminated, pdf: await face() },
    ];
    const made = await printShop({ ...job, faces });
    const again = await printShop({ ...job, faces });
    expect(Buffer.compare(Buffer.from(made), Buffer.from(again))).toBe(0);
    const read = await PDFDocument.load(made, { updateMetadata: false });
    expect(read.getPageCount()).toBe(2);
    const page = read.getPage(0);
    expect(boxOf(page.getMediaBox())).toEqual([0, 0, 620, 446]);
    expect(boxOf(page.getBleedBox())).toEqual([10, 10, 600, 426]);
    expect(boxOf(page.getTrimBox())).toEqual([13, 13, 594, 420]);
    expect(boxOf(page.getArtBox())).toEqual([27, 27, 566, 392]);
    expect(boxOf(read.getPage(1).getTrimBox())).toEqual([13, 13, 297, 210]);
  });

  test("bear card, issue, size and clear edge at their foot, and no film where none is laminated", async () => {
    const pdf = await face();
    const { text } = await readWithPdfjs(await printShop({ ...job, faces: [{ ...poster, pdf }] }));
    expect(text).toContain("PF-1 · issue B");
    expect(text).toContain("cut 594 × 420 mm · bleed 3 mm · clear edge 14 mm");
    expect(text).not.toContain("film");
  });

  test("say how large the film of a laminated card is, and show where it ends", async () => {
    const pdf = await face();
    const made = await printShop({ ...job, faces: [{ ...laminated, pdf }] });
    expect((await readWithPdfjs(made)).text).toContain(
      "cut first, then laminate in film of 303 × 216 mm (dashed): 3 mm seal film to film all round",
    );
    const bare = await printShop({ ...job, faces: [{ ...laminated, film: 0, pdf }] });
    const film = [10, 10, 313, 226];
    expect(await roundedPaths(made)).toContainEqual(film);
    expect(await roundedPaths(bare)).not.toContainEqual(film);
  });
});

describe("cards two on a paper", () => {
  const job = {
    title: "t",
    subject: "PF-1, PF-2, PF-3",
    paper: [210, 297],
    card: [210, 148],
    day: "2026-10-01",
  } as const;

  test("take half as many pages, the last half empty when they are odd, the same bytes twice", async () => {
    const cards = [await face(), await face(), await face()];
    const made = await twoUp({ ...job, cards });
    expect(Buffer.compare(Buffer.from(made), Buffer.from(await twoUp({ ...job, cards })))).toBe(0);
    const read = await PDFDocument.load(made, { updateMetadata: false });
    expect(read.getPageCount()).toBe(2);
    expect(boxOf(read.getPage(1).getMediaBox())).toEqual([0, 0, 210, 297]);
    expect(read.getSubject()).toBe("PF-1, PF-2, PF-3");
  });
});

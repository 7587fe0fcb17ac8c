import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { decodePDFRawStream, PDFDocument, PDFName, PDFRawStream } from "@cantoo/pdf-lib";
import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { packsOf } from "../../lib/compose/pack-contents.ts";
import { checkLibrary } from "../../lib/index.ts";
import type { SheetView } from "../../lib/model/sheet.ts";
import { expectedTexts } from "../../lib/print/expected-texts.ts";
import { keyOf, printLibrary } from "../../lib/print-library.ts";
import { renderSheet } from "../../lib/site/render-sheet.ts";

const today = "2026-11-25";
const all = checkLibrary("content", today).sheets ?? [];
const ofKind = (kind: SheetView["kind"], paper: string): SheetView => {
  const found = all.find(
    (sheet) =>
      sheet.system === "pebblefin" &&
      sheet.kind === kind &&
      sheet.format.id === paper &&
      !sheet.practice,
  );
  if (!found) throw new Error(`The demo has no ${kind} on ${paper}`);
  return found;
};
const sheets = [
  ofKind("pairing", "a4-landscape"),
  ofKind("plate-map", "a5-landscape"),
  ofKind("steps", "a4-portrait"),
  ofKind("lengths", "a4-portrait"),
];
const [pack] = packsOf(sheets);
if (!pack) throw new Error("There is no pack");
const bare = (text: string): string => text.normalize("NFKC").replace(/\s+/g, "");

type Node = { readonly role?: string; readonly alt?: string; readonly children?: readonly Node[] };
const nodes = (node: Node): readonly Node[] => [node, ...(node.children ?? []).flatMap(nodes)];

/** What a reader that knows nothing of ours makes of a file. */
async function read(file: string) {
  const data = Uint8Array.from(readFileSync(join(staging, file)));
  const task = getDocument({ data, isEvalSupported: false, useSystemFonts: false, verbosity: 0 });
  const document = await task.promise;
  const pages = await Promise.all(
    Array.from({ length: document.numPages }, async (_, index) => {
      const page = await document.getPage(index + 1);
      const { items } = await page.getTextContent();
      return {
        text: bare(items.map((item) => ("str" in item ? item.str : "")).join("")),
        structure: nodes((await page.getStructTree()) as Node),
        links: (await page.getAnnotations()).map(({ dest }) => dest as unknown),
      };
    }),
  );
  const outline = await Promise.all(
    ((await document.getOutline()) ?? []).map(async ({ title, dest }) => {
      const [to] = dest as [Parameters<typeof document.getPageIndex>[0]];
      return { title, page: (await document.getPageIndex(to)) + 1 };
    }),
  );
  const { info } = await document.getMetadata();
  const mark = await document.getMarkInfo();
  await task.destroy();
  return { pages, outline, info: info as Record<string, unknown>, marked: mark?.Marked };
}

let staging = "";
beforeAll(async () => {
  process.env["PUPPETEER_EXECUTABLE_PATH"] ??= "/usr/lib/chromium/chromium";
  staging = mkdtempSync(join(tmpdir(), "trayleaf-pack-"));
  const fragments = new Map(sheets.map((sheet) => [keyOf(sheet), renderSheet(sheet)]));
  await printLibrary(sheets, fragments, { out: "nowhere", staging, today });
}, 120_000);
afterAll(() => rmSync(staging, { recursive: true, force: true }));

describe("a pack", () => {
  test("names every card in its contents with the page it stands on, and links to it", async () => {
    const { pages } = await read(pack.file);
    expect(pages).toHaveLength(sheets.length + 1);
    for (const [index, { title }] of sheets.entries()) {
      expect(pages[0]?.text).toContain(bare(`${title}${index + 2}`));
      expect(pages[index + 1]?.text).toContain(bare(title));
    }
    expect(pages[0]?.links).toHaveLength(sheets.length);
  });

  test("says on every page which it is, and shows there what the card must show", async () => {
    const { pages } = await read(pack.file);
    for (const [index, { text }] of pages.entries()) {
      expect(text).toContain(bare(`pack page ${index + 1} of ${pages.length}`));
      const sheet = sheets[index - 1];
      for (const wanted of sheet ? expectedTexts(sheet) : []) expect(text).toContain(bare(wanted));
    }
  });

  test("has a bookmark for its contents and for every card, on its page", async () => {
    const { outline } = await read(pack.file);
    expect(outline).toEqual([
      { title: pack.title, page: 1 },
      ...sheets.map(({ title }, index) => ({ title, page: index + 2 })),
    ]);
  });

  test("says what it is in its metadata", async () => {
    const { info, marked } = await read(pack.file);
    expect(info).toMatchObject({
      Title: pack.title,
      Subject: "4 cards with their contents",
      Language: "en",
    });
    expect(marked).toBe(true);
  });
});

describe("a pack in greys", () => {
  test("says the same on every page, and holds no colour but greys", async () => {
    const file = pack.file.replace(".pdf", ".grey.pdf");
    const { pages } = await read(pack.file);
    const greys = await read(file);
    expect(greys.pages.map(({ text }) => text)).toEqual(pages.map(({ text }) => text));
    const pdf = await PDFDocument.load(readFileSync(join(staging, file)), {
      updateMetadata: false,
    });
    let streams = 0;
    for (const [, object] of pdf.context.enumerateIndirectObjects()) {
      expect(String(object)).not.toMatch(/DeviceRGB|DeviceCMYK/);
      if (!(object instanceof PDFRawStream) || object.dict.has(PDFName.of("Subtype"))) continue;
      const text = Buffer.from(decodePDFRawStream(object).decode()).toString("latin1");
      if (!text.includes(" BDC") && !text.includes(">>BDC")) continue;
      streams++;
      expect(text).not.toMatch(/ (rg|RG|k|K)\s/);
      expect(text).toMatch(/ g\s/);
    }
    expect(streams).toBe(sheets.length + 1);
  });
});

describe("a card's own PDF", () => {
  test.each(sheets.map((sheet) => [sheet.kind, sheet] as const))(
    "of %s has a title, subject, issue, keywords and language",
    async (_kind, sheet) => {
      const { info } = await read(`pdf/${keyOf(sheet)}.pdf`);
      expect(info).toMatchObject({
        Title: `${sheet.title} (${sheet.identity.card})`,
        Subject: sheet.lead,
        Language: sheet.identity.language,
        Custom: { Issue: sheet.identity.issue },
      });
      expect(info["Keywords"]).toContain(sheet.systemName);
      expect(info["Keywords"]).toContain(sheet.identity.fingerprint);
    },
  );

  test.each(sheets.map((sheet) => [sheet.kind, sheet] as const))(
    "of %s is tagged: one heading of the first level, figures with words, cells in rows",
    async (_kind, sheet) => {
      const { pages } = await read(`pdf/${keyOf(sheet)}.pdf`);
      const structure = pages[0]?.structure ?? [];
      const having = (role: string) => structure.filter((node) => node.role === role);
      expect(having("H1")).toHaveLength(1);
      const drawn = renderSheet(sheet).match(/role="img"/g) ?? [];
      expect(having("Figure")).toHaveLength(drawn.length);
      for (const { alt = "" } of having("Figure")) expect(alt.trim()).not.toBe("");
      if (sheet.kind === "pairing") {
        expect(having("TR")).toHaveLength(sheet.rows.length + 1);
        expect(having("TH").length).toBe(sheet.columns.length + sheet.rows.length);
      }
      if (sheet.kind === "steps") {
        expect(having("LI").length).toBeGreaterThanOrEqual(sheet.steps.length);
        expect(having("H2")).toHaveLength(sheet.steps.length);
      }
      if (sheet.kind === "lengths") expect(having("Table")).toHaveLength(sheet.columns.length);
    },
  );
});

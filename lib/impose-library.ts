import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { cellGrid } from "./impose/cell-grid.ts";
import { imposed } from "./impose/imposed.ts";
import { printShop, type ShopFace } from "./impose/print-shop.ts";
import { twoUp } from "./impose/two-up.ts";
import type { BuiltPack } from "./model/built.ts";
import type { Publisher } from "./model/publisher.ts";
import type { PocketView, SheetView } from "./model/sheet.ts";

const font = fileURLToPath(
  new URL(
    "../node_modules/@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-400-normal.woff",
    import.meta.url,
  ),
);
const papers = [
  { id: "a4", name: "A4", size: [210, 297], half: "a5-landscape" },
  { id: "letter", name: "US Letter", size: [215.9, 279.4], half: "half-letter-landscape" },
] as const;

type Made = Omit<BuiltPack, "bytes"> & { readonly pdf: Uint8Array };
type Day = { readonly staging: string; readonly today: string };

const read = (staging: string, id: string, format: string): Uint8Array =>
  readFileSync(join(staging, `pdf/${id}.${format}.pdf`));
const slugOf = ({ identity: { card, issue, date } }: SheetView): string =>
  `${card} · ${issue} · ${date}`;

/** Cards of two faces, many on a paper, ready to print on both sides and to cut. */
async function pockets(
  fronts: readonly PocketView[],
  { cards }: Publisher,
  { staging, today }: Day,
): Promise<Made[]> {
  const { right, up } = cards?.duplex_offset ?? { right: 0, up: 0 };
  const made: Made[] = [];
  for (const front of fronts)
    for (const { id: paper, name, size } of papers) {
      const { id, format, system, systemName } = front;
      const base = id.replace(/-front$/, "");
      const card = [format.width, format.height] as const;
      const title = `${systemName}: pocket cards, both sides, ${cellGrid(size, card).length} on ${name}, print only`;
      const pdf = await imposed({
        title,
        paper: size,
        card,
        front: read(staging, `${base}-front`, format.id),
        back: read(staging, `${base}-back`, format.id),
        offset: [right / 1000, up / 1000],
        slug: slugOf(front),
        font: readFileSync(font),
        day: today,
      });
      made.push({
        file: `imposed/${base}.${format.id}.${paper}.pdf`,
        title,
        system,
        paper: name,
        pdf,
      });
    }
  return made;
}

/** The plate maps of a system that have half a paper's size, two on a paper. */
async function halves(sheets: readonly SheetView[], { staging, today }: Day): Promise<Made[]> {
  const made: Made[] = [];
  for (const { id: paper, name, size, half } of papers) {
    const own = sheets.filter(
      ({ format, kind, practice }) => format.id === half && kind === "plate-map" && !practice,
    );
    for (const system of new Set(own.map((sheet) => sheet.system))) {
      const cards = own.filter((sheet) => sheet.system === system);
      const [first] = cards;
      if (!first) continue;
      const title = `${first.systemName}: plate maps, two on ${name}, print only`;
      const pdf = await twoUp({
        title,
        subject: cards.map(({ identity }) => identity.card).join(", "),
        paper: size,
        card: [first.format.width, first.format.height],
        cards: cards.map((sheet) => read(staging, sheet.id, half)),
        day: today,
      });
      made.push({
        file: `imposed/${system}-plate-maps.${half}.${paper}.pdf`,
        title,
        system,
        paper: name,
        pdf,
      });
    }
  }
  return made;
}

/** One face as a print shop gets it. */
function faceOf(
  { id, format }: Pick<SheetView, "id" | "format">,
  slug: string,
  staging: string,
): ShopFace {
  return {
    pdf: read(staging, id, format.id),
    card: [format.width, format.height],
    bleed: format.bleed,
    margin: format.margin,
    ...(format.film === undefined ? {} : { film: format.film }),
    slug,
  };
}

/** What a print shop makes: posters, and pocket cards of two faces. */
async function forPrintShop(
  sheets: readonly SheetView[],
  { staging, today }: Day,
): Promise<Made[]> {
  const made: Made[] = [];
  for (const sheet of sheets) {
    const { id, kind, format, system } = sheet;
    const faces =
      kind === "poster"
        ? [id]
        : kind === "pocket" && sheet.face === "front"
          ? [id, id.replace(/-front$/, "-back")]
          : [];
    if (faces.length === 0 || sheet.practice) continue;
    const title = `${sheet.title}, ${format.name}, with bleed and crop marks, print only`;
    const slug = slugOf(sheet);
    const pdf = await printShop({
      title,
      subject: slug,
      faces: faces.map((face, side) =>
        faceOf({ id: face, format }, `${slug} · side ${side + 1} of ${faces.length}`, staging),
      ),
      font: readFileSync(font),
      day: today,
    });
    made.push({
      file: `print-shop/${id}.${format.id}.pdf`,
      title,
      system,
      paper: format.name,
      pdf,
    });
  }
  return made;
}

/** Not laminated: what serves one case, and what is cut up or stuck on. */
const passing: ReadonlySet<SheetView["kind"]> = new Set(["case", "labels"]);

/** All cards of a system that hang laminated, in one file for whoever prints, cuts and laminates them; one for each family of papers. */
async function forLaminator(
  sheets: readonly SheetView[],
  { staging, today }: Day,
): Promise<Made[]> {
  const made: Made[] = [];
  const hung = sheets.filter(
    ({ format, kind, practice }) => format.film !== undefined && !passing.has(kind) && !practice,
  );
  for (const system of new Set(hung.map((sheet) => sheet.system)))
    for (const family of ["a", "letter"] as const) {
      const cards = hung.filter(
        (sheet) => sheet.system === system && sheet.format.family === family,
      );
      const [first] = cards;
      if (!first) continue;
      const paper = family === "a" ? "A sizes" : "US sizes";
      const title = `${first.systemName}: all cards to laminate, ${paper}, with crop marks and film guide, print only`;
      const pdf = await printShop({
        title,
        subject: cards.map(({ identity }) => identity.card).join(", "),
        faces: cards.map((sheet, at) =>
          faceOf(sheet, `${slugOf(sheet)} · ${at + 1} of ${cards.length}`, staging),
        ),
        font: readFileSync(font),
        day: today,
      });
      made.push({ file: `print-shop/${system}-cards.${family}.pdf`, title, system, paper, pdf });
    }
  return made;
}

/** Lays cards out for printing and cutting from the PDFs in `staging`: cards of two faces many on a paper, plate maps two on a
 * paper, posters and pocket cards with bleed and crop marks, all that is laminated in one file. */
export async function imposeLibrary(
  sheets: readonly SheetView[],
  publisher: Publisher,
  day: Day,
): Promise<BuiltPack[]> {
  const fronts = sheets.filter(
    (sheet): sheet is PocketView => sheet.kind === "pocket" && sheet.face === "front",
  );
  const made = [
    ...(await pockets(fronts, publisher, day)),
    ...(await halves(sheets, day)),
    ...(await forPrintShop(sheets, day)),
    ...(await forLaminator(sheets, day)),
  ];
  return made.map(({ pdf, ...told }) => {
    mkdirSync(dirname(join(day.staging, told.file)), { recursive: true });
    writeFileSync(join(day.staging, told.file), pdf);
    return { ...told, bytes: pdf.length };
  });
}

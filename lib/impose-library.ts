import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { cellGrid } from "./impose/cell-grid.ts";
import { imposed } from "./impose/imposed.ts";
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
  { id: "a4", name: "A4", size: [210, 297] },
  { id: "letter", name: "US Letter", size: [215.9, 279.4] },
] as const;

/** Lays every card of two faces, many on a paper, front and back, ready to print on both sides and to cut; from the PDFs in `staging`. */
export async function imposeLibrary(
  sheets: readonly SheetView[],
  publisher: Publisher,
  { staging, today }: { readonly staging: string; readonly today: string },
): Promise<BuiltPack[]> {
  const bytes = readFileSync(font);
  const { right, up } = publisher.cards?.duplex_offset ?? { right: 0, up: 0 };
  const fronts = sheets.filter(
    (sheet): sheet is PocketView => sheet.kind === "pocket" && sheet.face === "front",
  );
  const built: BuiltPack[] = [];
  for (const { id, format, identity, system, systemName } of fronts)
    for (const { id: paper, name, size } of papers) {
      const base = id.replace(/-front$/, "");
      const read = (face: string) =>
        readFileSync(join(staging, `pdf/${base}-${face}.${format.id}.pdf`));
      const card = [format.width, format.height] as const;
      const title = `${systemName}: pocket cards, both sides, ${cellGrid(size, card).length} on ${name}, print only`;
      const pdf = await imposed({
        title,
        paper: size,
        card,
        front: read("front"),
        back: read("back"),
        offset: [right / 1000, up / 1000],
        slug: `${identity.card} · ${identity.issue} · ${today}`,
        font: bytes,
        day: today,
      });
      const file = `imposed/${base}.${format.id}.${paper}.pdf`;
      mkdirSync(join(staging, "imposed"), { recursive: true });
      writeFileSync(join(staging, file), pdf);
      built.push({ file, title, bytes: pdf.length, system, paper: name });
    }
  return built;
}

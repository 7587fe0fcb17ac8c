import { join } from "node:path";
import type { SheetView } from "../model/sheet.ts";

/** What a build made, in lines: cards by kind, PDFs, pages, and the file to open. */
export function runSummary(
  sheets: readonly SheetView[],
  { out, pages, packs, pdf }: { out: string; pages: number; packs: number; pdf: boolean },
): string[] {
  const names = {
    pairing: "pairing sheets",
    lengths: "length sheets",
    "plate-map": "plate maps",
    steps: "step cards",
    tray: "tray cards",
    case: "case sheets",
    poster: "wall posters",
    pocket: "pocket cards",
    labels: "label sheets",
    mishaps: "sheets for what does not go to plan",
  } as const;
  const cards = sheets.filter(({ practice }) => practice === undefined);
  const count = (some: readonly SheetView[]): number => new Set(some.map(({ id }) => id)).size;
  const kinds = [
    ...Object.entries(names).map(
      ([kind, name]) => `${count(cards.filter((sheet) => sheet.kind === kind))} ${name}`,
    ),
    `${count(sheets.filter(({ practice }) => practice !== undefined))} practice sheets`,
  ];
  return [
    `Made ${kinds.join(", ")}.`,
    pdf
      ? `${sheets.length} one-page PDFs, ${packs} packs in colour and in greys, ${pages} pages of site.`
      : `${pages} pages of site, no PDFs.`,
    `Open ${join(out, "index.html")}`,
  ];
}

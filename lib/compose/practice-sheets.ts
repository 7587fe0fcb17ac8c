import type { Figure } from "../model/figure.ts";
import type { PairingView, PlateMapView, SheetView } from "../model/sheet.ts";
import type { WarningBox } from "../model/sheet-frame.ts";

/** Lines to write on. */
const blank = "_".repeat(32);
const short = "_".repeat(20);

const asked = ({ title }: WarningBox): WarningBox => ({
  title,
  lines: [{ subject: "Write:", words: "" }],
});

/** A view's drawings under ids of their own, so that a sheet and its practice sheet may stand on one page. */
function renamed<V extends SheetView>(view: V, from: string, to: string): V {
  const walk = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(walk);
    if (typeof value !== "object" || value === null) return value;
    if ("svg" in value) {
      const figure = value as Figure;
      const { id, svg } = figure;
      return { ...figure, id: id.replace(from, to), svg: svg.replaceAll(`${from}-`, `${to}-`) };
    }
    return Object.fromEntries(Object.entries(value).map(([name, item]) => [name, walk(item)]));
  };
  return walk(view) as V;
}

function emptied(view: PairingView | PlateMapView): PairingView | PlateMapView {
  if (view.kind === "plate-map")
    return {
      ...view,
      bands: view.bands.map((band) => ({
        ...band,
        pairings: band.pairings.map(({ zone, called }) => ({ zone, called, hand: blank })),
      })),
      ...(view.everyScrew ? { everyScrew: `For every screw here: ${short}` } : {}),
      table: view.table.map(({ label }) => ({ label, kind: short, takes: short })),
      traps: asked(view.traps),
    };
  return {
    ...view,
    rows: view.rows.map((row) => ({
      ...row,
      cells: row.cells.map(({ role }) => ({ role, noun: "", number: "", note: "" })),
    })),
    traps: asked(view.traps),
    lookAlikes: asked(view.lookAlikes),
  };
}

/** The practice sheet of a pairing sheet or of a plate map: the same questions, the answers left blank and nothing that gives them away; the card it is made from answers it. */
function practiceSheet(view: PairingView | PlateMapView): SheetView {
  const { sections: _, ...plain } = emptied(view);
  const id = `${view.id}-practice`;
  const own = {
    ...plain,
    id,
    title: `Practice: ${view.title}`,
    lead: "Write the answers in.",
    practice: { words: `Answers: card ${view.identity.card}.`, answers: view.id },
    cautions: [],
    signed: [],
    identity: { ...view.identity, card: `${view.identity.card}-practice` },
  };
  return renamed(own as PairingView | PlateMapView, view.id, id);
}

/** Practice sheets: one for each pairing sheet, and one for the map of each plate in its first length. */
export function practiceSheets(sheets: readonly SheetView[]): readonly SheetView[] {
  const plates = new Set<string>();
  return sheets.flatMap((view) => {
    if (view.kind === "pairing") return [practiceSheet(view)];
    if (view.kind !== "plate-map") return [];
    const plate = view.origin;
    if (plates.has(plate)) return [];
    plates.add(plate);
    return [practiceSheet(view)];
  });
}

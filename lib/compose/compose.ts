import type { SheetView } from "../model/sheet.ts";
import { caseSheets } from "./case-sheet.ts";
import type { Composing } from "./composing.ts";
import { fingerprinted } from "./fingerprint.ts";
import { labelSheets } from "./label-sheet.ts";
import { lengthSheets } from "./length-sheet.ts";
import { mishapSheets } from "./mishap-sheet.ts";
import { pairingSheets } from "./pairing-sheet.ts";
import { plateMapSheets } from "./plate-map-sheet.ts";
import { pocketSheets } from "./pocket-sheet.ts";
import { posterSheets } from "./poster-sheet.ts";
import { practiceSheets } from "./practice-sheets.ts";
import { procedureSheets } from "./procedure-sheet.ts";
import { techniqueSheets } from "./technique-sheet.ts";
import { traySheets } from "./tray-sheet.ts";

/** The sheet with its square code: what a list of the copies that hang needs to tell a stale one; a card of two small faces has no room for it. */
function coded({ pictures }: Composing, sheet: SheetView): SheetView {
  if (sheet.kind === "pocket" && sheet.face !== "whole") return sheet;
  const { card, issue, fingerprint } = sheet.identity;
  const text = [card, issue.replace(/^issue /, ""), fingerprint].join(" ").toUpperCase();
  return { ...sheet, cardCode: pictures.cardCode(`${sheet.id}-code`, text) };
}

/** The view model of every sheet in every format it is made in, already worded, in a stable order; without its fingerprint. */
export function sheetViews(composing: Composing): SheetView[] {
  const { catalogue, derived } = composing;
  const systems = [...catalogue.systems.keys()];
  const cards: readonly SheetView[] = [
    ...systems.flatMap((system) => pairingSheets(composing, system)),
    ...systems.flatMap((system) => lengthSheets(composing, system)),
    ...derived.plates.flatMap((plate) => plateMapSheets(composing, plate)),
    ...systems.flatMap((system) => techniqueSheets(composing, system)),
    ...systems.flatMap((system) => mishapSheets(composing, system)),
    ...[...catalogue.procedures.keys()].flatMap((procedure) =>
      procedureSheets(composing, procedure),
    ),
    ...[...catalogue.trays.keys()].flatMap((tray) => traySheets(composing, tray)),
    ...[...catalogue.trays.keys()].flatMap((tray) => labelSheets(composing, tray)),
    ...systems.flatMap((system) => pocketSheets(composing, system)),
    ...systems.flatMap((system) => posterSheets(composing, system)),
    ...[...catalogue.cases.keys()].flatMap((one) => caseSheets(composing, one)),
  ];
  return [...cards, ...practiceSheets(cards)];
}

/** Every sheet with the fingerprint of what it shows and its square code. */
export function compose(composing: Composing): SheetView[] {
  return sheetViews(composing).map((sheet) => coded(composing, fingerprinted(sheet)));
}

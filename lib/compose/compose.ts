import type { SheetView } from "../model/sheet.ts";
import { caseSheets } from "./case-sheet.ts";
import type { Composing } from "./composing.ts";
import { lengthSheets } from "./length-sheet.ts";
import { pairingSheets } from "./pairing-sheet.ts";
import { plateMapSheets } from "./plate-map-sheet.ts";
import { procedureSheets } from "./procedure-sheet.ts";
import { techniqueSheets } from "./technique-sheet.ts";
import { traySheets } from "./tray-sheet.ts";

/** The view model of every sheet in every format it is made in, already worded, in a stable order. */
export function compose(composing: Composing): SheetView[] {
  const { catalogue, derived } = composing;
  const systems = [...catalogue.systems.keys()];
  return [
    ...systems.flatMap((system) => pairingSheets(composing, system)),
    ...systems.flatMap((system) => lengthSheets(composing, system)),
    ...derived.plates.flatMap((plate) => plateMapSheets(composing, plate)),
    ...systems.flatMap((system) => techniqueSheets(composing, system)),
    ...[...catalogue.procedures.keys()].flatMap((procedure) =>
      procedureSheets(composing, procedure),
    ),
    ...[...catalogue.trays.keys()].flatMap((tray) => traySheets(composing, tray)),
    ...[...catalogue.cases.keys()].flatMap((one) => caseSheets(composing, one)),
  ];
}

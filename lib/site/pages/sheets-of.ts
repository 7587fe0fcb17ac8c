import { type Catalogue, known } from "../../model/catalogue.ts";
import type { SheetView } from "../../model/sheet.ts";
import type { SiteInput } from "../site-input.ts";

type Wanted = (sheet: SheetView) => boolean;

/** Sheets that hold a row for one of some chains. */
function pairedIn(chains: ReadonlySet<string>): Wanted {
  return (sheet) =>
    sheet.kind === "pairing" && sheet.rows.some((row) => row.chains.some((id) => chains.has(id)));
}

function trayHolds({ trays }: Catalogue, id: string): Wanted {
  const files = new Set(
    [...trays.values()]
      .filter(({ slots }) =>
        slots.some(
          (slot) =>
            (slot.holds === "instrument" && slot.instrument === id) ||
            (slot.holds === "rack" && slot.screw === id) ||
            (slot.holds === "plate" && slot.plate === id),
        ),
      )
      .map(({ file }) => file),
  );
  return (sheet) => sheet.kind === "tray" && files.has(sheet.origin);
}

/** The sheets that show an instrument: where it stands in a row, then where it lies. */
export function instrumentSheets({ sheets, derived, catalogue }: SiteInput, id: string) {
  const chains = derived.chains.filter(({ links }) =>
    links.some(({ instrument }) => instrument === id),
  );
  const paired = pairedIn(new Set(chains.map((chain) => chain.id)));
  return [...sheets.filter(paired), ...sheets.filter(trayHolds(catalogue, id))];
}

/** The sheets that show a screw: its rows, its steps, its lengths, its rack. */
export function screwSheets({ sheets, derived, catalogue }: SiteInput, id: string) {
  const chains = derived.chains.filter(({ screw }) => screw === id);
  const { called, system } = known(catalogue.screws, id);
  const kinds: readonly Wanted[] = [
    pairedIn(new Set(chains.map((chain) => chain.id))),
    (sheet) => sheet.kind === "steps" && sheet.system === system && sheet.title === called,
    (sheet) => sheet.kind === "lengths" && sheet.columns.some(({ screw }) => screw === id),
    trayHolds(catalogue, id),
  ];
  return kinds.flatMap((wanted) => sheets.filter(wanted));
}

/** The sheets that are made from one file: a plate's maps, a tray's card, a procedure's, a case's, a technique's step cards. */
export function sheetsFrom({ sheets }: SiteInput, file: string) {
  return sheets.filter(({ origin }) => origin === file);
}

/** The sheets of an instrument, screw, plate or tray. */
export function partSheets(input: SiteInput, id: string) {
  const { instruments, screws, plates, trays } = input.catalogue;
  if (instruments.has(id)) return instrumentSheets(input, id);
  if (screws.has(id)) return screwSheets(input, id);
  return sheetsFrom(input, (plates.get(id) ?? known(trays, id)).file);
}

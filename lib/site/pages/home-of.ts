import type { SheetView } from "../../model/sheet.ts";
import type { Link } from "../page.ts";
import type { SiteInput } from "../site-input.ts";
import { plateLink, procedureLink, systemLink, techniqueLink, trayLink } from "./part-links.ts";

/** The page of the thing a card is about: its plate, tray, procedure or technique, else its system. */
export function homeOf(input: SiteInput, { origin, system }: SheetView): readonly Link[] {
  const { plates, trays, procedures, recipes } = input.catalogue;
  const from = <T extends { readonly id: string; readonly file: string }>(
    map: ReadonlyMap<string, T>,
    link: (input: SiteInput, id: string) => Link,
  ): readonly Link[] =>
    [...map.values()].filter(({ file }) => file === origin).map(({ id }) => link(input, id));
  const own = [
    ...from(plates, plateLink),
    ...from(trays, trayLink),
    ...from(procedures, procedureLink),
    ...from(recipes, techniqueLink),
  ];
  if (own.length > 0) return own;
  return input.catalogue.systems.has(system) ? [systemLink(input, system)] : [];
}

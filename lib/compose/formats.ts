import { type Format, type FormatKind, formats, formatsOfKind } from "../model/format.ts";
import type { Composing } from "./composing.ts";

/** How many of the formats that make sense are made when nobody asks otherwise. */
const usual: Readonly<Record<FormatKind, number>> = {
  pairing: 2,
  lengths: 2,
  "plate-map": 1,
  steps: 2,
  tray: 2,
  case: 2,
  mishaps: 2,
  poster: 1,
  pocket: 2,
  labels: 1,
};

/** The formats a kind of sheet is made in: as its system's file asks, else as the publisher asks, else the usual ones. */
export function formatsFor(
  { catalogue }: Composing,
  system: string,
  kind: FormatKind,
): readonly Format[] {
  const asked =
    catalogue.systems.get(system)?.cards.formats?.[kind] ??
    catalogue.publisher.cards?.formats?.[kind] ??
    formatsOfKind[kind].slice(0, usual[kind]);
  return [...new Set(asked)].map((id) => formats[id]);
}

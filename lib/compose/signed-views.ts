import type { DefinitionKind } from "../model/definition.ts";
import type { FormatKind } from "../model/format.ts";
import type { SignedView } from "../model/sheet-frame.ts";
import type { Composing } from "./composing.ts";
import { usesOf } from "./trace/uses-of.ts";

/** The sheets on which a signature under a definition of each kind touches who reads them. */
const touched: Readonly<Partial<Record<DefinitionKind, readonly FormatKind[]>>> = {
  screw: ["pairing", "steps"],
  instrument: ["pairing", "steps", "tray"],
  zone: ["pairing", "steps"],
  opening: ["pairing", "steps"],
  recipe: ["steps"],
  procedure: ["steps"],
  plate: ["plate-map", "tray"],
  tray: ["tray"],
  site: ["case"],
  case: ["case"],
};

type Shown = {
  readonly kind: FormatKind;
  readonly system: string;
  readonly shows: readonly string[];
};

/** What was signed about the definitions that a sheet is made from, in order of id; nothing on sheets whose readers it does not touch. */
export function signedViews(composing: Composing, sheet: Shown): readonly SignedView[] {
  const files = new Set(
    usesOf(composing, sheet)
      .filter(({ kind }) => touched[kind]?.includes(sheet.kind))
      .map(({ file }) => file),
  );
  return [...composing.catalogue.signOffs.values()]
    .filter(({ found_in }) => files.has(found_in))
    .map(({ id, reason, role, date }) => ({ id, words: `${reason} ${role}, ${date}.` }));
}

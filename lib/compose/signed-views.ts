import type { DefinitionKind } from "../model/definition.ts";
import type { FormatKind } from "../model/format.ts";
import type { SignedView } from "../model/sheet-frame.ts";
import type { SignOff } from "../model/sign-off.ts";
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

/** The screw of which a signature under a site's file says that a length is empty; undefined for any other signature. */
function emptyScrew({ catalogue }: Composing, { found_in, at = "" }: SignOff): string | undefined {
  const [, tray, place] = /^trays\.(\d+)\.empty_lengths\.(\d+)$/.exec(at) ?? [];
  const site = [...catalogue.sites.values()].find(({ file }) => file === found_in);
  return site?.trays[Number(tray)]?.empty_lengths[Number(place)]?.screw;
}

/** What was signed about the definitions that a sheet is made from, in order of id; nothing on sheets whose readers it does not touch, and of an empty length only where its screw is shown. */
export function signedViews(composing: Composing, sheet: Shown): readonly SignedView[] {
  const uses = usesOf(composing, sheet);
  const files = new Set(
    uses.filter(({ kind }) => touched[kind]?.includes(sheet.kind)).map(({ file }) => file),
  );
  const screws = new Set(uses.flatMap(({ kind, id }) => (kind === "screw" ? [id] : [])));
  return [...composing.catalogue.signOffs.values()]
    .filter((one) => {
      const screw = emptyScrew(composing, one);
      return files.has(one.found_in) && (screw === undefined || screws.has(screw));
    })
    .map(({ id, reason, role, date }) => ({ id, words: `${reason} ${role}, ${date}.` }));
}

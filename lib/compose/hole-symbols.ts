import { known } from "../model/catalogue.ts";
import type { Figure } from "../model/figure.ts";
import type { OpeningKind, ZoneKind } from "../model/zone.ts";
import type { Composing } from "./composing.ts";
import { listed } from "./spoken.ts";

const zoneWords: Readonly<Record<ZoneKind, string>> = {
  threaded: "threaded round",
  "plain-round": "plain round",
  "plain-oblong": "oblong",
  wire: "wire hole",
  suture: "suture hole",
};

/** How a whole opening is named beside its symbol. */
export const openingWords: Readonly<Record<OpeningKind, string>> = {
  threaded: "threaded",
  "plain-round": "plain round",
  "plain-oblong": "oblong compression hole",
  combined: "combined: threaded part / plain part",
  wire: "temporary wire",
  suture: "suture",
};

/** The part of a hole a screw goes through, in words: "threaded part" and "plain part" only where an opening has both. */
export function partWords(kind: ZoneKind, opening: OpeningKind): string {
  if (opening === "combined") return kind === "threaded" ? "threaded part" : "plain part";
  return zoneWords[kind];
}

type Symbol = {
  readonly kind: OpeningKind;
  readonly use?: "threaded" | "plain";
  readonly words: string;
};

function symbolsOf({ catalogue }: Composing, zone: string): readonly Symbol[] {
  const { kind } = known(catalogue.zones, zone);
  const homes = [...catalogue.openings.values()].filter(({ zones }) => zones.includes(zone));
  const alone: Symbol = { kind, words: zoneWords[kind] };
  const use = kind === "threaded" ? "threaded" : "plain";
  const shared: Symbol = { kind: "combined", use, words: partWords(kind, "combined") };
  const single = homes.some(({ zones }) => zones.length === 1) || homes.length === 0;
  const combined = homes.some(({ zones }) => zones.length > 1);
  return [...(single ? [alone] : []), ...(combined ? [shared] : [])];
}

/** The symbols and words of every kind of hole that the zones occur as, each kind once. */
export function holeSymbols(
  composing: Composing,
  id: string,
  zones: readonly string[],
): { readonly figures: readonly [Figure, ...Figure[]]; readonly words: string } {
  const symbols = new Map(
    zones.flatMap((zone) => symbolsOf(composing, zone)).map((symbol) => [symbol.words, symbol]),
  );
  const [first, ...rest] = [...symbols.values()].map(({ kind, use }, index) =>
    composing.pictures.hole(`${id}-${index + 1}`, kind, use),
  );
  if (first === undefined) throw new Error(`No hole for ${id}`);
  return { figures: [first, ...rest], words: listed([...symbols.keys()], "or") };
}

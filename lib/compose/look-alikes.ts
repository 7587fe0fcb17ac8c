import type { LookAlike } from "../model/chain.ts";
import type { WarningLine } from "../model/sheet.ts";
import type { Composing } from "./composing.ts";
import { capital, spoken } from "./spoken.ts";

function nameOf({ catalogue, derived }: Composing, id: string): string {
  const instrument = catalogue.instruments.get(id);
  if (instrument) return spoken(instrument);
  const plate = catalogue.plates.get(id) ?? derived.plates.find((laid) => laid.id === id);
  return catalogue.screws.get(id)?.called ?? plate?.name ?? id;
}

/** Pairs that are taken for one another and what tells them apart, in the order they were derived. */
export function lookAlikeLines(
  composing: Composing,
  pairs: readonly LookAlike[],
): readonly WarningLine[] {
  return pairs.map(({ a, b, tell }) => {
    const end = /[.!?]$/.test(tell) ? "" : ".";
    return {
      subject: `${capital(nameOf(composing, a))} and ${nameOf(composing, b)}:`,
      words: `${tell}${end}`,
    };
  });
}

/** Pairs of which a side is handled here, those with both sides first. */
export function pairsWithin(
  pairs: readonly LookAlike[],
  handled: (id: string) => boolean,
): readonly LookAlike[] {
  const both = pairs.filter(({ a, b }) => handled(a) && handled(b));
  return [...both, ...pairs.filter(({ a, b }) => handled(a) !== handled(b))];
}

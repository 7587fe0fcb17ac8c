import type { DoubleNumber, LookAlike } from "../model/chain.ts";
import { mm } from "../model/measure.ts";
import type { WarningLine } from "../model/sheet.ts";
import type { Composing } from "./composing.ts";
import { capital, listed, spoken, tellTale } from "./spoken.ts";

type Told = Pick<Composing, "catalogue" | "derived">;

function nameOf({ catalogue, derived }: Told, id: string): string {
  const instrument = catalogue.instruments.get(id);
  if (instrument) return spoken(instrument);
  const plate = catalogue.plates.get(id) ?? derived.plates.find((laid) => laid.id === id);
  return catalogue.screws.get(id)?.called ?? plate?.name ?? id;
}

/** Pairs that are taken for one another and what tells them apart, in the order they were derived. */
export function lookAlikeLines(
  composing: Told,
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

/** Numbers that are called for several kinds of thing: what each is, and the rings that tell a drill. */
export function doubleNumberLines(
  { catalogue }: Pick<Composing, "catalogue">,
  numbers: readonly DoubleNumber[],
): readonly WarningLine[] {
  return numbers.map(({ number, bearers }) => {
    const words = bearers.map(({ id, what }) => {
      const drill = catalogue.instruments.get(id);
      const tell = drill ? tellTale(drill) : "";
      return `a ${what}${tell === "" ? "" : ` (${tell})`}`;
    });
    return {
      subject: `${mm(number)} is called for`,
      words: `${listed([...new Set(words)])}: say the noun.`,
    };
  });
}

import type { DoubleNumber, LookAlike } from "../model/chain.ts";
import { partner, seenOn } from "../model/look-alike.ts";
import { mm } from "../model/measure.ts";
import { plateName } from "../model/plate-name.ts";
import type { WarningLine } from "../model/sheet-frame.ts";
import type { Composing } from "./composing.ts";
import { drawnPlate } from "./plate-facts.ts";
import { capital, listed, spoken, tellTale } from "./spoken.ts";
import { sizesWhole, unparted } from "./unparted.ts";

type Told = Pick<Composing, "catalogue">;

function nameOf({ catalogue }: Told, id: string): string {
  const [instrument, plate] = [catalogue.instruments.get(id), catalogue.plates.get(id)];
  if (instrument) return spoken(instrument);
  return plate ? plateName(plate) : (catalogue.screws.get(id)?.called ?? id);
}

/** A name that follows another, without the words that both begin with unless only a number would be left: "RIGHT" after "Upper shin plate, LEFT", but "drill 2.7" after "drill 2.5". */
function after(first: string, name: string): string {
  const [before, words] = [first.split(" "), name.split(" ")];
  const rest = words.slice(words.findIndex((word, index) => word !== before[index])).join(" ");
  return /^\p{L}/u.test(rest) ? rest : name;
}

/** Pairs that are taken for one another, each part with what is seen on it, in the order they were derived. */
export function lookAlikeLines(told: Told, pairs: readonly LookAlike[]): readonly WarningLine[] {
  return pairs.map((pair) => {
    const { a, b, tells } = pair;
    const [one, other] = [nameOf(told, a), nameOf(told, b)];
    if (tells === undefined)
      return {
        subject: `${unparted(capital(one))} and ${unparted(other)}:`,
        words: `${seenOn(pair, a)}.`,
      };
    return {
      subject: unparted(`${capital(one)}:`),
      words: sizesWhole(`${tells[0]};`),
      other: {
        subject: unparted(`${after(one, other)}:`),
        words: sizesWhole(`${tells[1]}.`),
      },
    };
  });
}

const unbroken = (words: string): string => words.replaceAll(" ", "\u00a0");

/** What a part is taken for by a pair, and what is seen there: "drill 2.7", "3 rings"; neither parted at its spaces. */
export function partnerWords(
  told: Told,
  pair: LookAlike,
  id: string,
): { readonly name: string; readonly seen: string } {
  const other = partner(pair, id);
  if (other === undefined) throw new Error(`${id} is neither part of the pair`);
  const name = after(nameOf(told, id), nameOf(told, other));
  return { name: unbroken(name), seen: unbroken(seenOn(pair, other)) };
}

/** Each plate that a plate is taken for, other than its own other side, with what is seen on it and on this one. */
export function plateAlikeLines(
  told: Pick<Composing, "catalogue" | "derived">,
  plate: string,
): readonly WarningLine[] {
  const mirrored = (id: string): string => drawnPlate(told.catalogue, id).id;
  return told.derived.lookAlikes.flatMap((pair) => {
    const other = partner(pair, plate);
    if (other === undefined || mirrored(other) === mirrored(plate)) return [];
    const { name, seen } = partnerWords(told, pair, plate);
    return [
      {
        subject: "Looks alike:",
        words: `${name} (${seen}); here ${unbroken(seenOn(pair, plate))}.`,
      },
    ];
  });
}

/** What is easily taken for what among the things handled on a sheet, the worst first: pairs of which both parts are handled, numbers that are called for several of them, pairs of which one part is. */
export function confusions(
  { catalogue, derived }: Pick<Composing, "catalogue" | "derived">,
  handled: (id: string) => boolean,
): readonly WarningLine[] {
  const { lookAlikes, doubleNumbers } = derived;
  const both = lookAlikes.filter(({ a, b }) => handled(a) && handled(b));
  const one = lookAlikes.filter(({ a, b }) => handled(a) !== handled(b));
  const numbers = doubleNumbers.filter(({ bearers }) => bearers.some(({ id }) => handled(id)));
  return [
    ...lookAlikeLines({ catalogue }, both),
    ...doubleNumberLines({ catalogue }, numbers),
    ...lookAlikeLines({ catalogue }, one),
  ];
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
      return `${unparted(`a ${what}`)}${tell === "" ? "" : ` ${unparted(`(${tell})`)}`}`;
    });
    return {
      subject: `${mm(number)} is called for`,
      words: `${listed([...new Set(words)])}: say the noun.`,
    };
  });
}

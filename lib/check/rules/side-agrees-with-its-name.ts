import type { Breach, Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";

type Sided = {
  readonly file: string;
  readonly name: string;
  readonly mark?: string;
  readonly side: string;
};

/** The side that a name tells, or the letter at the end of a mark ("PF LF L"). */
function told({ name, mark = "" }: Sided): string | undefined {
  const word = /\b(left|right)\b/i.exec(name)?.[1]?.toLowerCase();
  const letter = / ([LR])$/.exec(mark)?.[1];
  return word ?? (letter === "L" ? "left" : letter === "R" ? "right" : undefined);
}

function* other(one: Sided): Generator<Breach> {
  const side = told(one);
  if (side !== undefined && side !== one.side)
    yield {
      file: one.file,
      path: ["side"],
      message: `Expected ${side}, as ${one.mark ? `"${one.name}" marked ${one.mark}` : `"${one.name}"`} says, got ${one.side}`,
    };
}

/** The stated side is the side that the name or the mark tells. */
export const sideAgreesWithItsName: Rule = {
  id: "side-agrees-with-its-name",
  severity: "stop",
  about: "case",
  summary: "A plate or case whose name or mark tells a side states that side.",
  why: "Name and mark are read aloud, the side is printed in capitals: they must not contradict each other.",
  fix: "Compare the side with the order and with the metal.",
  source: "common practice",
  *check({ catalogue }) {
    for (const plate of catalogue.plates.values()) yield* other(plate);
    for (const one of catalogue.cases.values())
      yield* other({ file: one.file, name: one.name, side: one.side });
  },
  examples: [
    passes("left and left", 'Side left, "lower fibula plate, left", marked LF L.'),
    fails("right in words, left in fact", 'Side left, "ankle tip, right".', {
      "case/case-a name": "ankle tip, right",
    }),
    fails("the mark of the other side", "Side left, marked LF R.", {
      "plate/lower-fibula-left name": "lower fibula plate",
      "plate/lower-fibula-left mark": "LF R",
    }),
  ],
};

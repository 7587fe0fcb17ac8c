import { type Catalogue, known } from "../../model/catalogue.ts";
import type { Defined } from "../../model/definition.ts";
import { mm } from "../../model/measure.ts";
import type { Breach, Rule } from "../../model/rule.ts";
import type { Zone } from "../../model/zone.ts";
import { fails, passes } from "../example.ts";

const numbers = (text: string): readonly number[] =>
  (text.match(/\d+(?:\.\d+)?/g) ?? []).map(Number);
const kindWords = {
  threaded: /\bthreaded\b/i,
  "plain-round": /\bround\b/i,
  "plain-oblong": /\boblong\b/i,
  wire: /\bwire\b/i,
  suture: /\bsuture\b/i,
} as const satisfies Readonly<Record<Zone["kind"], RegExp>>;

/** The numbers a part of a hole can be called by: the threads it permits; of a hole for no screw, its width within 0.3 mm. */
function callsItself({ screws }: Catalogue, zone: Defined<Zone>, number: number): boolean {
  if ("permits" in zone)
    return zone.permits.some((screw) => Number(mm(known(screws, screw).major)) === number);
  const play = zone.through - number * 1000;
  return play >= 0 && play <= 300;
}

function* misnamed(catalogue: Catalogue, zone: Defined<Zone>): Generator<Breach> {
  for (const number of numbers(zone.name))
    if (!callsItself(catalogue, zone, number))
      yield {
        file: zone.file,
        path: ["name"],
        message: `Expected ${zone.name} to take a screw, wire or suture of ${number}, got none`,
      };
}

/** A part of a hole is called by the size of a screw it takes, and a hole by its parts. */
export const holeIsNamedForWhatItTakes: Rule = {
  id: "hole-is-named-for-what-it-takes",
  severity: "stop",
  about: "plate",
  summary:
    "A number in the name of a part of a hole is the thread of a screw it permits, or the wire it passes; a number in an opening's name stands in the name of one of its parts, and its words are theirs.",
  why: "Holes are asked for by name; a hole called 3.5 that takes 2.7 is filled with what its name says.",
  fix: "Correct the name, the screws that are permitted, or the parts of the opening.",
  source: "common practice",
  *check({ catalogue }) {
    for (const zone of catalogue.zones.values()) yield* misnamed(catalogue, zone);
    for (const { file, name, zones } of catalogue.openings.values()) {
      const parts = zones.map((zone) => known(catalogue.zones, zone));
      const called = parts.flatMap((part) => numbers(part.name));
      const odd = numbers(name).find((number) => !called.includes(number));
      const kinds = Object.entries(kindWords).filter(([, word]) => word.test(name));
      const sole = parts.length === 1 && kinds.length > 0;
      const wrong = sole && !kinds.some(([kind]) => parts.some((part) => part.kind === kind));
      if (odd !== undefined || wrong)
        yield {
          file,
          path: ["zones"],
          message: `Expected the parts of ${name} to be what it is called, got ${parts.map((part) => part.name).join(" and ")}`,
        };
    }
  },
  examples: [
    passes("called by its parts", "Combined opening 3.5: threaded part 3.5 and oblong 3.5."),
    fails("an opening of another size", "Threaded hole 2.7 cut as threaded part 3.5.", {
      "opening/t27 zones": ["threaded-35"],
    }),
    fails("an opening of another kind", "Threaded hole 3.5 cut as oblong 3.5.", {
      "opening/t27 name": "threaded hole 3.5",
      "opening/t27 zones": ["oblong-35"],
    }),
    fails("a part called by another screw", "Threaded part 3.5 that permits locking 2.7 only.", {
      "zone/threaded-35 permits": ["locking-27"],
    }),
  ],
};

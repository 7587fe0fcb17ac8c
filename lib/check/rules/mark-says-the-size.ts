import type { Defined } from "../../model/definition.ts";
import type { Instrument } from "../../model/instrument.ts";
import { mm, wholeMm } from "../../model/measure.ts";
import type { Breach, Rule } from "../../model/rule.ts";
import type { Screw } from "../../model/screw.ts";
import { fails, passes } from "../example.ts";

const digits = (text: string): readonly string[] => text.match(/\d+(\.\d+)?/g) ?? [];

/** The field that a mark tells and the number it must show there; none where the mark tells a partner's size. */
function sized(one: Instrument): readonly (readonly [path: string[], number: string])[] {
  switch (one.kind) {
    case "drill":
    case "tap":
    case "wire":
      return [[["diameter"], mm(one.diameter)]];
    case "torque-limiter":
      return [[["torque"], mm(one.torque)]];
    case "driver-shaft":
      return [[["drive"], digits(one.drive).at(-1) ?? ""]];
    case "removal-kit":
      return one.drives.map((drive, index) => [
        ["drives", String(index)],
        digits(drive).at(-1) ?? "",
      ]);
    case "depth-gauge":
      return [
        [["scale", "from"], wholeMm(one.scale.from)],
        [["scale", "to"], wholeMm(one.scale.to)],
      ];
    default:
      return [];
  }
}

const same = (a: string, b: string): boolean => Number(a) === Number(b);

function* unlike(
  { file, mark, name }: Defined<Instrument> | Defined<Screw>,
  numbers: readonly (readonly [path: string[], number: string])[],
): Generator<Breach> {
  const [etched, spoken] = [digits(mark), digits(name)];
  for (const [path, number] of numbers) {
    if (etched.length > 0 && !etched.some((one) => same(one, number)))
      yield {
        file,
        path,
        message: `Expected ${etched.join(" to ")}, as the mark of ${name} says, got ${number}`,
      };
    else if (spoken.length > 0 && !spoken.some((one) => same(one, number)))
      yield {
        file,
        path,
        message: `Expected ${spoken.join(" to ")}, as the name ${name} says, got ${number}`,
      };
  }
}

/** The number etched on a part, and the number in its name, is the number it has. */
export const markSaysTheSize: Rule = {
  id: "mark-says-the-size",
  severity: "stop",
  about: "instrument",
  summary:
    "Mark and name of a screw, drill, tap, wire, driver, removal kit, limiter or gauge tell the number that its facts state.",
  why: "The mark is what theatre staff check before they hand over. A slip in the number contradicts the metal.",
  fix: "Compare the number with the part itself.",
  source: "common practice",
  *check({ catalogue }) {
    for (const screw of catalogue.screws.values())
      yield* unlike(screw, [[["major"], mm(screw.major)]]);
    for (const one of catalogue.instruments.values()) yield* unlike(one, sized(one));
  },
  examples: [
    passes("mark and number", "Drill 2.5 is marked 2.5."),
    fails("a drill other than its mark", "Diameter 2.6, marked 2.5.", {
      "instrument/drill-25 diameter": 2.6,
    }),
    fails("a thousandth is another number", "Diameter 2.501, marked 2.5.", {
      "instrument/drill-25 diameter": 2.501,
    }),
    fails("a screw other than its mark", "Thread 3.6, marked 3.5.", {
      "screw/cortical-35 major": 3.6,
    }),
    fails("a gauge other than its mark", "Scale from 12, marked 10-70.", {
      "instrument/gauge-small scale.from": 12,
    }),
    fails("a removal kit for another drive", "Drive hexalobular 20, marked X10.", {
      "instrument/removal-small mark": "X10",
      "instrument/removal-small drives": ["hexalobular-20"],
    }),
    fails("a driver for another drive", "Drive hexalobular 10, marked 20.", {
      "instrument/driver-20 drive": "hexalobular-10",
    }),
  ],
};

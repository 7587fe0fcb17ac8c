import type { Instrument } from "../../model/instrument.ts";
import { mm, type Um } from "../../model/measure.ts";
import type { Rule } from "../../model/rule.ts";
import type { Screw } from "../../model/screw.ts";
import { fails, passes } from "../example.ts";

type Length = readonly [path: readonly (string | number)[], length: Um];

/** The grain of long lengths, micrometres. */
const grain: Um = 500;

function ofScrew({ lengths, thread }: Screw): readonly Length[] {
  return [
    ...lengths.flatMap(({ from, to, step }, index): Length[] => [
      [["lengths", index, "from"], from],
      [["lengths", index, "to"], to],
      [["lengths", index, "step"], step],
    ]),
    ...(thread.extent === "partial" ? [[["thread", "length"], thread.length] as const] : []),
  ];
}

function ofInstrument(one: Instrument): readonly Length[] {
  return [
    [["length"], one.length],
    ...(one.kind === "drill" ? [[["reach"], one.reach] as const] : []),
    ...(one.kind === "drill" && one.marks_for_sleeve_length !== undefined
      ? [[["marks_for_sleeve_length"], one.marks_for_sleeve_length] as const]
      : []),
    ...(one.kind === "depth-gauge"
      ? Object.entries(one.scale).map(([key, length]) => [["scale", key], length] as const)
      : []),
  ];
}

/** Lengths that hands and eyes read are whole or half millimetres. */
export const lengthsAreWhole: Rule = {
  id: "lengths-are-whole",
  severity: "stop",
  about: "instrument",
  summary:
    "Rack lengths, scales, allowances and overall lengths are whole or half millimetres, and a run of a rack ends on a step.",
  why: "No screw is marked 13.9 and no gauge reads to a tenth. Such a length is a slip, or was turned over from inches.",
  fix: "Compare the length with the parts list.",
  source: "common practice",
  *check({ catalogue }) {
    const told = (file: string, lengths: readonly Length[]) =>
      lengths
        .filter(([, length]) => length % grain !== 0)
        .map(([path, length]) => ({
          file,
          path,
          message: `Expected a whole or half millimetre, got ${mm(length)}`,
        }));
    for (const screw of catalogue.screws.values()) {
      yield* told(screw.file, ofScrew(screw));
      for (const [index, { from, to, step }] of screw.lengths.entries())
        if ((to - from) % step !== 0)
          yield {
            file: screw.file,
            path: ["lengths", index, "to"],
            message: `Expected a run from ${mm(from)} in steps of ${mm(step)} to end on a step, got ${mm(to)}`,
          };
    }
    for (const one of catalogue.instruments.values()) yield* told(one.file, ofInstrument(one));
    for (const { file, length_policy } of catalogue.systems.values())
      for (const [kind, policy] of Object.entries(length_policy))
        yield* told(file, [
          [["length_policy", kind, "add"], policy.add],
          [["length_policy", kind, "overshoot_below"], policy.overshoot_below],
        ]);
  },
  examples: [
    passes("whole and half", "Rack from 10 in steps of 2; overall 94.5.", {
      "instrument/gauge-small length": 94.5,
    }),
    fails("a thousandth beside the half", "Overall 94.501.", {
      "instrument/gauge-small length": 94.501,
    }),
    fails("a tenth", "Rack from 10.1.", { "screw/cortical-35 lengths.0.from": 10.1 }),
    fails("a scale in tenths", "Step 0.9.", { "instrument/gauge-small scale.step": 0.9 }),
    fails("a run that ends between steps", "10 to 51 in steps of 2.", {
      "screw/cortical-35 lengths.0.to": 51,
    }),
  ],
};

import { mm } from "../../model/measure.ts";
import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";

/** The most play a wire has in its hole, allowed, micrometres. */
const most = 300;

const source = { document: "pebblefin-ifu", section: "Table 1" };
const parts = (through: number, diameter: number) => ({
  "zone/wire-16": { kind: "wire", name: "wire hole 1.6", through, source },
  "opening/wire": { name: "wire hole", zones: ["wire-16"], source },
  "plate/lower-fibula-left holes.2": { label: "W1", opening: "wire", at: [14, 0], region: "head" },
  "instrument/wire-16": {
    kind: "wire",
    name: "wire 1.6",
    mark: "1.6",
    diameter,
    tip: "trocar",
    length: 150,
    source,
  },
});

/** For every wire hole there is a wire that fits it. */
export const wirePassesItsHole: Rule = {
  id: "wire-passes-its-hole",
  severity: "sign",
  about: "plate",
  summary:
    "A wire of the system or of the general trays passes each wire hole with 0 to 0.3 mm to spare.",
  why: "A wire that does not pass is found with the plate on the bone; one that is loose holds nothing.",
  fix: "Correct the hole's width or the wire's diameter, or add the wire.",
  source: "common practice",
  needsAll: ["wire"],
  *check({ catalogue }) {
    const wires = [...catalogue.instruments.values()].flatMap((one) =>
      one.kind === "wire" ? [one] : [],
    );
    for (const { file, kind, system, name, through } of catalogue.zones.values()) {
      if (kind !== "wire") continue;
      const fits = wires.some(
        (wire) =>
          [system, "general"].includes(wire.system) &&
          wire.diameter <= through &&
          wire.diameter >= through - most,
      );
      if (!fits)
        yield {
          file,
          path: ["through"],
          message: `Expected a wire of ${mm(through - most)} to ${mm(through)} for ${name}, got none`,
        };
    }
  },
  examples: [
    passes("a wire that passes", "Wire 1.6 in a hole of 1.7.", parts(1.7, 1.6)),
    passes("a wire as wide as its hole", "Wire 1.6 in a hole of 1.6.", parts(1.6, 1.6)),
    fails("a wire that does not pass", "Wire 1.601 and a hole of 1.6.", parts(1.6, 1.601)),
    passes("a wire with 0.3 to spare", "Wire 1.6 in a hole of 1.9.", parts(1.9, 1.6)),
    fails("a loose wire", "Wire 1.6 in a hole of 1.901.", parts(1.901, 1.6)),
  ],
};

import type { Defined } from "../../model/definition.ts";
import type { InstrumentOf } from "../../model/instrument.ts";
import { mm } from "../../model/measure.ts";
import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";

/** Where a system rings its drills, its pilot drills are told apart by their rings. */
export const ringsTellPilotDrillsApart: Rule = {
  id: "rings-tell-pilot-drills-apart",
  severity: "sign",
  about: "instrument",
  summary:
    "Where drills of a system have rings on the shank, each of them says how many, and no two of its pilot drills with other diameters have as many.",
  why: "Rings are what is seen of a drill in its slot. Two pilot drills with as many rings are taken for one another.",
  fix: "Count the rings on both drills; sign where the maker really grinds as many on both.",
  source: "common practice",
  *check({ catalogue }) {
    const drills = [...catalogue.instruments.values()].filter(
      (one): one is Defined<InstrumentOf<"drill">> => one.kind === "drill",
    );
    for (const drill of drills) {
      const { file, name, bands, use, system, diameter } = drill;
      const others = drills.filter((one) => one !== drill && one.system === system);
      if (bands === undefined && others.some((one) => one.bands !== undefined))
        yield { file, path: ["bands"], message: `Missing how many rings ${name} has` };
      const same = others.find(
        (one) =>
          bands !== undefined &&
          use === "pilot" &&
          one.use === use &&
          one.bands === bands &&
          one.diameter > diameter,
      );
      if (same)
        yield {
          file,
          path: ["bands"],
          message: `Expected ${name} (${mm(diameter)}) and ${same.name} (${mm(same.diameter)}) with other numbers of rings, got ${bands} on both`,
        };
    }
  },
  examples: [
    passes("one, two, three", "Drills 2.0, 2.5 and 2.7 with 1, 2 and 3 rings."),
    fails("as many on two", "Drills 2.5 and 2.7, both with 3 rings.", {
      "instrument/drill-25 bands": 3,
    }),
    fails("not said of one", "Drill 2.5 says nothing of rings; the others do.", {
      "instrument/drill-25 bands": undefined,
    }),
  ],
};

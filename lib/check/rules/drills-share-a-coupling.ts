import type { Defined } from "../../model/definition.ts";
import type { InstrumentOf } from "../../model/instrument.ts";
import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";

/** The drills of one system go into one power tool. */
export const drillsShareACoupling: Rule = {
  id: "drills-share-a-coupling",
  severity: "sign",
  about: "instrument",
  summary: "All drills of a system have the same coupling, and no driver shaft has it.",
  why: "A drill with another coupling does not go into the chuck that lies on the table; a driver that does is turned by power.",
  fix: "Compare the couplings with the parts; sign where the maker really gives drills two.",
  source: "common practice",
  *check({ catalogue }) {
    const tools = [...catalogue.instruments.values()];
    const drills = tools.filter(
      (one): one is Defined<InstrumentOf<"drill">> => one.kind === "drill",
    );
    for (const drill of drills) {
      const own = tools.filter(({ system }) => system === drill.system);
      const same = own.filter((one) => one.kind === "drill" && one.coupling === drill.coupling);
      const other = own.filter((one) => one.kind === "drill" && one.coupling !== drill.coupling);
      const driver = own.find(
        (one) => one.kind === "driver-shaft" && one.coupling === drill.coupling,
      );
      const message = driver
        ? `Expected another coupling on ${drill.name} than on ${driver.name}, got ${drill.coupling}`
        : other.length >= same.length
          ? `Expected the coupling of the other drills on ${drill.name}, got ${drill.coupling}`
          : undefined;
      if (message !== undefined) yield { file: drill.file, path: ["coupling"], message };
    }
  },
  examples: [
    passes("one coupling", "Every drill has the small drill coupling."),
    fails("a drill with a shaft's coupling", "Drill 2.5 has the small shaft coupling.", {
      "instrument/drill-25 coupling": "shaft-small",
    }),
    fails("a drill with a coupling of its own", "Drill 2.5 has the large shaft coupling.", {
      "instrument/drill-25 coupling": "shaft-large",
    }),
  ],
};

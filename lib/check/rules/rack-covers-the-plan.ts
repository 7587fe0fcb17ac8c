import { known } from "../../model/catalogue.ts";
import type { LengthTable } from "../../model/chain.ts";
import { type Um, wholeMm } from "../../model/measure.ts";
import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";
import { rackSpan } from "../rack-span.ts";

/** Readings in words, neighbours of the gauge's scale joined: "51 to 53, 56". */
function runs(readings: readonly Um[], scale: readonly Um[]): string {
  const found: [Um, Um][] = [];
  for (const reading of readings) {
    const last = found.at(-1);
    if (last && scale.indexOf(reading) === scale.indexOf(last[1]) + 1) last[1] = reading;
    else found.push([reading, reading]);
  }
  return found
    .map(([from, to]) => (from === to ? wholeMm(from) : `${wholeMm(from)} to ${wholeMm(to)}`))
    .join(", ");
}

function dead({ readings, add }: LengthTable, [least, most]: readonly [Um, Um]): string {
  const gaps = readings.filter(
    ({ reading, answer }) =>
      answer.kind === "gap" && reading + add >= least && reading + add <= most,
  );
  return runs(
    gaps.map(({ reading }) => reading),
    readings.map(({ reading }) => reading),
  );
}

/** The rack has a screw for every length that a plan expects. */
export const rackCoversThePlan: Rule = {
  id: "rack-covers-the-plan",
  severity: "sign",
  about: "case",
  summary:
    "For each screw a plan names, the rack reaches from the shortest to the longest length expected, and no reading between them is without a screw.",
  why: "A gap in the rack is found when the hole is drilled: the next screw is 3 mm short or stands 2 mm proud.",
  fix: "Tell the surgeon before the case which readings have no screw, or correct the expected lengths.",
  source: "common practice",
  *check({ catalogue, derived }) {
    for (const { file, plan } of catalogue.cases.values()) {
      const told = new Set<string>();
      for (const [index, { screw: id, lengths }] of plan.entries()) {
        if (!lengths) continue;
        const screw = known(catalogue.screws, id);
        const { shortest, longest } = rackSpan(screw);
        const path = ["plan", index, "lengths"];
        const [least, most] = lengths.map(wholeMm);
        if (lengths[0] < shortest || lengths[1] > longest)
          yield {
            file,
            path,
            message: `Expected a rack of ${screw.called} from ${least} to ${most}, got ${wholeMm(shortest)} to ${wholeMm(longest)}`,
          };
        const table = derived.lengthTables.get(id);
        const readings = table ? dead(table, lengths) : "";
        const message = `The rack of ${screw.called} has no screw for readings ${readings}; planned are ${least} to ${most}`;
        if (readings !== "" && !told.has(message)) yield { file, path, message };
        told.add(message);
      }
    }
  },
  examples: [
    passes("lengths the rack has", "Planned 14 to 24; the rack goes from 10 to 50 in steps of 2.", {
      "case/case-a plan.1.lengths": [14, 24],
    }),
    passes("the whole rack", "Planned 10 to 70; the rack goes from 10 to 70.", {
      "case/case-a plan.1.lengths": [10, 70],
    }),
    fails("a length beyond the rack", "Planned 10 to 71; the rack ends at 70.", {
      "case/case-a plan.1.lengths": [10, 71],
    }),
    fails("a length before the rack", "Planned 9.5 to 20; the rack begins at 10.", {
      "case/case-a plan.1.lengths": [9.5, 20],
    }),
    fails(
      "readings between two lengths",
      "Locking 3.5 goes from 50 to 55: readings 51 to 53 have no screw.",
      {
        "case/case-a plan.1.lengths": [44, 60],
        "system/pebblefin length_policy": {
          locking: {
            add: 0,
            overshoot_below: 2,
            datum: "screw-length",
            source: { document: "pebblefin-ifu", section: "6.2" },
          },
        },
      },
    ),
  ],
};

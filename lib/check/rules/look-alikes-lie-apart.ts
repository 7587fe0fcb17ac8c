import type { Catalogue } from "../../model/catalogue.ts";
import { seenOn } from "../../model/look-alike.ts";
import { plateName } from "../../model/plate-name.ts";
import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";

/** The scores from which two parts should not lie side by side, and from which that is signed. */
const [told, signed] = [50, 70] as const;

function partOf({ plates, screws, instruments }: Catalogue, id: string) {
  const [part, plate] = [instruments.get(id) ?? screws.get(id), plates.get(id)];
  return plate ? { file: plate.file, name: plateName(plate) } : part;
}

/** Parts that look alike do not lie in slots that touch. */
export const lookAlikesLieApart: Rule = {
  id: "look-alikes-lie-apart",
  severity: "note",
  about: "tray",
  summary:
    "Two parts that look alike, 50 or more of 100, do not lie in slots that touch; from 70 on it is signed. The score weighs kind 25, width 25, length, mark and sign 15 each, coupling 5, times 1 where hold is lost, 0.7 for work done again, 0.4 for delay, and times 0.7 where a glance tells them apart.",
  why: "A hand that reaches one slot too far takes the other drill, and so does whoever packs the tray.",
  fix: "Put something else between them, or mark the slots.",
  source:
    "common practice; NHS England 2019, wrong selection of orthopaedic fracture fixation plates",
  *check({ catalogue, derived }) {
    for (const pair of derived.lookAlikes) {
      const { a, b, near, score } = pair;
      const [one, other] = [partOf(catalogue, a), partOf(catalogue, b)];
      if (near === "adjacent" && score >= told && one && other)
        yield {
          file: one.file,
          path: ["mark"],
          severity: score >= signed ? "sign" : "note",
          message: `${one.name} (${seenOn(pair, a)}) and ${other.name} (${seenOn(pair, b)}) look alike, ${score} of 100, and lie side by side`,
        };
    }
  },
  examples: [
    passes("apart", "Drill 2.5 and drill 2.7 with a slot between them."),
    fails("side by side", "Drill 2.5 with 2 rings beside drill 2.7 with 3: 62 of 100.", {
      "tray/small slots.4.at": [15, 0],
      "tray/small slots.3.at": [14, 0],
    }),
    fails(
      "side by side, and nothing tells them apart",
      "Drill 2.5 with 3 rings beside drill 2.7 with 3, both marked 2.7: 92 of 100.",
      {
        "tray/small slots.4.at": [15, 0],
        "tray/small slots.3.at": [14, 0],
        "instrument/drill-25 bands": 3,
        "instrument/drill-25 mark": "2.7",
      },
    ),
  ],
};

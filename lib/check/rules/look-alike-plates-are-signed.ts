import { known } from "../../model/catalogue.ts";
import { seenOn } from "../../model/look-alike.ts";
import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";

const source = { document: "pebblefin-ifu", section: "Table 1" };
const twin = (stiffness: string, length: number) => ({
  "plate/twin": {
    name: "thin plate",
    mark: "TP",
    family: "thin",
    side: "none",
    stiffness,
    thickness: { shaft: 1.2 },
    variants: [{ holes: 3, length }],
    proximal: "end",
    end_cue: "the narrow end",
    up_face: "The etched face lies up.",
    outline: [
      { at: [0, -6] },
      { from: "end", at: [0, -6] },
      { from: "end", at: [0, 6] },
      { at: [0, 6] },
    ],
    tail: length - 46,
    row: {
      prefix: "S",
      opening: "c35",
      first: [20, 0],
      pitch: 13,
      region: "shaft",
      threaded_end: "proximal",
    },
    source,
  },
});

/** Plates of nearly one outline and of different stiffness are known to someone who answers for them. */
export const lookAlikePlatesAreSigned: Rule = {
  id: "look-alike-plates-are-signed",
  severity: "sign",
  about: "plate",
  summary:
    "No two plates of a system have nearly the same outline, within 10 %, and different stiffness.",
  why: "A thin plate was put in for a stiff one in seven cases of one hospital group, by different teams; the plates looked alike and lay in one tray.",
  fix: "Change a mark or a tray so that they cannot be taken for one another, or sign how they are told apart.",
  source: "NHS England 2019, wrong selection of orthopaedic fracture fixation plates",
  *check({ catalogue, derived }) {
    for (const pair of derived.lookAlikes) {
      if (pair.what !== "plate") continue;
      const { a, b } = pair;
      const [one, other] = [known(catalogue.plates, a), known(catalogue.plates, b)];
      if ("mirror_of" in one || "mirror_of" in other) continue;
      yield {
        file: one.file,
        path: ["stiffness"],
        message: `${one.name} (${seenOn(pair, a)}) and ${other.name} (${seenOn(pair, b)}) look alike and differ in stiffness`,
      };
    }
  },
  examples: [
    passes(
      "a plate of another length",
      "54 mm stiff and 62 mm thin: 13 % apart.",
      twin("thin-shell", 62),
    ),
    passes("a plate as stiff", "54 mm stiff and 56 mm stiff.", twin("stiff", 56)),
    fails(
      "a thin twin",
      "54 mm long, 2.4 thick, stiff; 56 mm long, 1.2 thick, thin.",
      twin("thin-shell", 56),
    ),
  ],
};

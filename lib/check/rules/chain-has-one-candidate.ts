import { known } from "../../model/catalogue.ts";
import type { ChainGap, Role } from "../../model/chain.ts";
import type { Breach, Rule, RuleInput } from "../../model/rule.ts";

/** The field of the screw that sets what a role must be; the other roles follow from the hole. */
const asked: Partial<Record<Role, string>> = {
  "pilot-drill": "pilot",
  "gliding-drill": "gliding",
  "gliding-guide": "gliding",
  insert: "gliding",
  gauge: "lengths",
  tap: "self_tapping",
  driver: "drive",
  handle: "drive",
  limiter: "torque",
};

function placeOf(
  { catalogue }: RuleInput,
  { zone, screw, role }: ChainGap,
): Pick<Breach, "file" | "path"> {
  const facts = known(catalogue.screws, screw);
  const field = asked[role];
  if (field !== undefined) return { file: facts.file, path: field in facts ? [field] : [] };
  const hole = known(catalogue.zones, zone);
  const index = "permits" in hole ? hole.permits.indexOf(screw) : -1;
  return { file: hole.file, path: index < 0 ? [] : ["permits", index] };
}

function nearest({ verdicts }: ChainGap): string {
  const [first, ...rest] = [...verdicts]
    .filter(({ fits }) => !fits)
    .sort((a, b) => a.because.length - b.because.length);
  return first === undefined
    ? ""
    : `; nearest ${[first, ...rest]
        .slice(0, 2)
        .map(({ instrument, because }) => `${instrument} (${because.join("; ")})`)
        .join(", ")}`;
}

/** Every instrument a screw's chain asks for is answered by exactly one of the system. */
export const chainHasOneCandidate: Rule = {
  id: "chain-has-one-candidate",
  severity: "stop",
  about: "chain",
  summary:
    "For each screw in each hole by each technique, exactly one instrument of the system fits each place in the chain.",
  why: "With none, the card would have a blank where the nurse looks. With two, the choice would be left to whoever is tired.",
  fix: "Correct the numbers of the parts named, add the missing instrument, or take the screw out of the hole's permits.",
  source: "common practice",
  *check(input) {
    for (const gap of input.derived.gaps) {
      const { called } = known(input.catalogue.screws, gap.screw);
      const where = `${known(input.catalogue.zones, gap.zone).name} by ${gap.recipe}`;
      const role = gap.role.replace("-", " ");
      const got =
        gap.fitting.length === 0
          ? `got none${nearest(gap)}`
          : `got ${gap.fitting.length}: ${gap.fitting.join(", ")}`;
      yield {
        ...placeOf(input, gap),
        message: `Expected one ${role} for ${called} in ${where}, ${got}`,
      };
    }
  },
  examples: [
    {
      title: "one instrument in each place",
      passes: true,
      shows: "Locking 3.5 in threaded part 3.5: sleeve 3.5, drill 2.7, driver 20, limiter 1.6 N·m.",
      edits: [],
    },
    {
      title: "no sleeve with the hole's thread and bore",
      passes: false,
      shows: "Sleeve 3.5 with bore 3.3: no sleeve guides drill 2.7.",
      edits: [{ file: "instrument/sleeve-35", path: ["bore"], value: 3.3 }],
    },
    {
      title: "two drills of one diameter",
      passes: false,
      shows:
        "The gliding drill 2.7 is called a pilot drill and reaches as far: two drills 2.7 fit locking 3.5.",
      edits: [
        { file: "instrument/drill-27-gliding", path: ["use"], value: "pilot" },
        { file: "instrument/drill-27-gliding", path: ["reach"], value: 112 },
      ],
    },
  ],
};

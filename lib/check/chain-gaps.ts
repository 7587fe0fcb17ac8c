import { known } from "../model/catalogue.ts";
import type { ChainGap, Role } from "../model/chain.ts";
import type { Breach, RuleInput } from "../model/rule.ts";
import { answering } from "./meant.ts";

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

const got = (gap: ChainGap): string =>
  gap.fitting.length === 0
    ? `got none${nearest(gap)}`
    : `got ${gap.fitting.length}: ${gap.fitting.join(", ")}`;

type Alike = readonly [ChainGap, ...ChainGap[]];

function alikeGaps(input: RuleInput): readonly Alike[] {
  const groups = new Map<string, Alike>();
  for (const gap of input.derived.gaps) {
    const key = JSON.stringify([placeOf(input, gap), gap.screw, gap.role, got(gap)]);
    const before = groups.get(key);
    groups.set(key, before ? [...before, gap] : [gap]);
  }
  return [...groups.values()];
}

/** Every hole with its techniques: "plain part by neutral and compression, plain round hole by neutral". */
function where({ catalogue }: RuleInput, gaps: Alike): string {
  const zones = [...new Set(gaps.map(({ zone }) => zone))].map((zone) => {
    const recipes = gaps.filter((gap) => gap.zone === zone).map(({ recipe }) => recipe);
    return `${known(catalogue.zones, zone).name} by ${recipes.join(" and ")}`;
  });
  return zones.join("; ");
}

/** The gaps of all chains as findings; those that one correction closes, of one screw and one place in its chain with the same candidates, are told as one. */
export function gapsTold(input: RuleInput): readonly Breach[] {
  return alikeGaps(input).map((alike) => {
    const [gap] = alike;
    const { called } = known(input.catalogue.screws, gap.screw);
    return {
      ...placeOf(input, gap),
      needsAll: gap.fitting.length === 0 ? [answering[gap.role]] : [],
      message: `Expected one ${gap.role.replace("-", " ")} for ${called} in ${where(input, alike)}, ${got(gap)}`,
    };
  });
}

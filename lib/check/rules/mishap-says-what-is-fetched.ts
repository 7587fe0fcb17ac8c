import type { Defined } from "../../model/definition.ts";
import type { Mishap } from "../../model/mishap.ts";
import type { Breach, Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";

const said = {
  drill: /\b(second|spare|other|new) drill\b/i,
  "removal-kit": /\bremoval kit\b/i,
} as const satisfies Readonly<Record<NonNullable<Mishap["fetch"]>, RegExp>>;
const stops = /^stop\b/i;

function* faults({ file, name, acts, fetch }: Defined<Mishap>): Generator<Breach> {
  for (const [what, words] of Object.entries(said)) {
    const act = acts.findIndex((one) => words.test(one));
    if (act >= 0 && fetch !== what)
      yield { file, path: ["acts", act], message: `Missing fetch: ${what} for "${name}"` };
    if (act < 0 && fetch === what)
      yield { file, path: ["fetch"], message: `Missing in the acts of "${name}": the ${what}` };
  }
  const stop = acts.findIndex((one) => stops.test(one));
  if (stop > 0)
    yield { file, path: ["acts", stop], message: `Expected stopping to come first in "${name}"` };
}

const broken = (more: object) => ({
  "mishap/broken": {
    name: "The drill breaks",
    order: 1,
    acts: ["Stop.", "Hand a second drill."],
    fetch: "drill",
    source: { document: "pebblefin-ifu", section: "Table 1" },
    ...more,
  },
});

/** What is fetched when something does not go to plan is said in the acts and found in the trays; stopping comes first. */
export const mishapSaysWhatIsFetched: Rule = {
  id: "mishap-says-what-is-fetched",
  severity: "stop",
  about: "technique",
  summary:
    "An act that fetches a second drill or a removal kit has its field fetch, and the other way round; an act that stops comes first.",
  why: "The sheet tells in which slot the part lies, by fetch; without it somebody searches while the surgeon waits.",
  fix: "Correct acts or fetch, and put the stop first.",
  source: "common practice",
  *check({ catalogue }) {
    for (const mishap of catalogue.mishaps.values()) yield* faults(mishap);
  },
  examples: [
    passes("said and found", "A second drill is handed; fetch is drill.", broken({})),
    fails(
      "said, not found",
      "A second drill is handed, and fetch is not there.",
      broken({ fetch: undefined }),
    ),
    fails("found, not said", "Fetch is drill, and no act hands one.", broken({ acts: ["Stop."] })),
    fails(
      "stopped too late",
      "The drill is handed first, then everything stops.",
      broken({ acts: ["Hand a second drill.", "Stop."] }),
    ),
  ],
};

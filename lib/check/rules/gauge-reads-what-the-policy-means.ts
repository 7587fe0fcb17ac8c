import { known } from "../../model/catalogue.ts";
import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";

const source = { document: "pebblefin-ifu", section: "6.2" };
const policy = (datum: string) => ({
  "system/pebblefin length_policy": { locking: { add: 0, overshoot_below: 2, datum, source } },
});
const words = { "screw-length": "the screw's length", "bare-depth": "the bare depth" } as const;

/** One gauge measures for a screw, and reads what the length policy adds its allowance to. */
export const gaugeReadsWhatThePolicyMeans: Rule = {
  id: "gauge-reads-what-the-policy-means",
  severity: "stop",
  about: "chain",
  summary:
    "For each screw under a length policy all chains use one gauge, and that gauge reads what the policy's datum says.",
  why: "An allowance for bare depth added to a reading that already is the screw's length makes every screw too long; two gauges make two tables. No table would be printed.",
  fix: "Write datum and reads as the instructions for use state them, and keep one gauge for each screw.",
  source: "common practice",
  *check({ catalogue, derived }) {
    for (const screw of catalogue.screws.values()) {
      const system = catalogue.systems.get(screw.system);
      const field = screw.class === "locking" ? "locking" : "plain_head";
      const agreed = system?.length_policy[field];
      if (!system || !agreed) continue;
      const ids = derived.chains
        .filter((chain) => chain.screw === screw.id)
        .flatMap(({ links }) => links.find(({ role }) => role === "gauge")?.instrument ?? []);
      const gauges = [...new Set(ids)].map((id) => known(catalogue.instruments, id));
      if (gauges.length > 1)
        yield {
          file: screw.file,
          path: ["lengths"],
          message: `Expected one gauge for ${screw.called}, got ${gauges.map(({ name }) => name).join(" and ")}`,
        };
      for (const gauge of gauges)
        if (gauge.kind === "depth-gauge" && gauge.reads !== agreed.datum)
          yield {
            file: system.file,
            path: ["length_policy", field, "datum"],
            message: `Expected an allowance to ${words[gauge.reads]}, which ${gauge.name} reads, got one to ${words[agreed.datum]}`,
          };
    }
  },
  examples: [
    passes(
      "one datum",
      "The gauge reads the screw's length; the allowance of 0 is to the screw's length.",
      policy("screw-length"),
    ),
    fails(
      "two data",
      "The gauge reads the screw's length; the allowance of 0 is to the bare depth.",
      policy("bare-depth"),
    ),
    fails(
      "two gauges",
      "Locking 3.5 is measured with gauge 10 to 70 here and with gauge 0 to 80 there.",
      {
        ...policy("screw-length"),
        "zone/threaded-other@other": {
          kind: "threaded",
          name: "threaded part of another system",
          through: 4.1,
          thread: "th-35",
          permits: ["locking-35"],
          source,
        },
        "instrument/gauge-other@other": {
          kind: "depth-gauge",
          name: "gauge 0 to 80",
          mark: "0-80",
          scale: { from: 0, to: 80, step: 1 },
          hook: 1.7,
          reads: "screw-length",
          seat: "plate-hole",
          length: 180,
          source,
        },
      },
    ),
  ],
};

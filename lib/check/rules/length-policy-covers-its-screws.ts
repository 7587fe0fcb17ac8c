import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";

const policy = (only: "locking" | "plain_head") => ({
  "system/pebblefin length_policy": {
    [only]: { add: 0, overshoot_below: 2, datum: "screw-length" },
  },
});

/** A system that says how a reading becomes a length says so for all its screws. */
export const lengthPolicyCoversItsScrews: Rule = {
  id: "length-policy-covers-its-screws",
  severity: "sign",
  about: "screw",
  summary:
    "A system with a length policy for its locking or its plain-head screws has one for the others too, if it has such screws.",
  why: "A sheet with a ladder for one kind of screw only invites reading the other kind off the same ladder.",
  fix: "Add the policy from the instructions for use; sign where these give none for the others.",
  source: "common practice",
  *check({ catalogue }) {
    for (const { id, file, name, length_policy: policy } of catalogue.systems.values()) {
      const own = [...catalogue.screws.values()].filter(({ system }) => system === id);
      const has = {
        locking: own.some((screw) => screw.class === "locking"),
        plain_head: own.some((screw) => screw.class !== "locking"),
      };
      for (const [kind, other] of [
        ["locking", "plain_head"],
        ["plain_head", "locking"],
      ] as const)
        if (has[kind] && policy[other] && !policy[kind])
          yield {
            file,
            path: ["length_policy"],
            message: `Missing the length policy for the ${kind.replace("_", "-")} screws of ${name}`,
          };
    }
  },
  examples: [
    passes("none at all", "No policy: the sheet prints that the instructions for use say."),
    fails(
      "for locking screws only",
      "Cortical screws, and a policy for locking ones.",
      policy("locking"),
    ),
    fails(
      "for plain-head screws only",
      "Locking screws, and a policy for the others.",
      policy("plain_head"),
    ),
  ],
};

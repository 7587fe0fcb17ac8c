import type { Rule, RuleExample } from "./rule.ts";

/** What is said of any rule, whichever stage looks after it: enough to explain it, not to run it. */
export type ToldRule = Omit<Rule, "check" | "examples"> & {
  readonly examples: readonly Pick<RuleExample, "title" | "passes" | "shows">[];
};

/** A rule of reading, validating or resolving: it always stops, and is told by what is accepted and what is refused. */
export const refusal = (
  id: string,
  summary: string,
  why: string,
  fix: string,
  passes: string,
  fails: string,
): ToldRule => ({
  id,
  severity: "stop",
  about: "reading",
  summary,
  why,
  fix,
  source: "common practice",
  examples: [
    { title: "accepted", passes: true, shows: passes },
    { title: "refused", passes: false, shows: fails },
  ],
});

import type { Rule, RuleExample } from "./rule.ts";

/** What is said of any rule, whichever stage looks after it: enough to explain it, not to run it. */
export type ToldRule = Omit<Rule, "check" | "examples"> & {
  readonly examples: readonly Pick<RuleExample, "title" | "passes" | "shows">[];
};

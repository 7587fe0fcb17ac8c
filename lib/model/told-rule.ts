import type { Finding, Place } from "./finding.ts";
import type { Breach, Rule, RuleExample } from "./rule.ts";

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

/** What a rule found, at a place; what it was told with stands before the rule's own severity and fix. */
export const findingOf = (
  rule: Pick<ToldRule, "id" | "severity" | "why" | "fix">,
  { message, severity, fix }: Pick<Breach, "message" | "severity" | "fix">,
  place: Place,
): Finding => ({
  rule: rule.id,
  severity: severity ?? rule.severity,
  message,
  why: rule.why,
  fix: fix ?? rule.fix,
  place,
});

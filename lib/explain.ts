import { rules } from "./check/rules.ts";
import { suggestion } from "./model/nearest-name.ts";
import { Stop } from "./model/stop.ts";
import type { ToldRule } from "./model/told-rule.ts";
import { readingRules } from "./read/reading-rules.ts";
import { explainRule, listRules } from "./report/explain-text.ts";
import { resolvingRules } from "./resolve/resolving-rules.ts";
import { validatingRules } from "./validate/validating-rules.ts";

/** Prints one rule of any stage, or the list of them all, and gives the exit code. Stops with 2 at an id that no rule has. */
export function explain(id: string | undefined): number {
  const all = [readingRules, validatingRules, resolvingRules, rules].flatMap((of) =>
    Object.values<ToldRule>(of),
  );
  const rule = all.find((one) => one.id === id);
  if (id !== undefined && !rule)
    throw new Stop(
      2,
      `Unknown rule "${id}".`,
      suggestion(
        id,
        all.map((one) => one.id),
        "rules",
      ),
    );
  process.stdout.write(rule ? explainRule(rule) : listRules(all));
  return 0;
}

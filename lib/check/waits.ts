import type { Unread } from "../model/definition.ts";
import type { Breach, Needed, Rule } from "../model/rule.ts";

const isOf = (need: Needed, { kind, sort }: Unread): boolean =>
  need === kind || (kind === "instrument" && (sort === undefined || sort === need));

/** What lies in no system's folder may be about any of them. */
const mayTouch = (file: string, { system }: Unread): boolean =>
  system === "general" || !file.startsWith("systems/") || file.startsWith(`systems/${system}/`);

/** True when something unread may be what a rule says is absent; without a breach, when that may be so of any. */
export function waits(
  rule: Pick<Rule, "needsAll">,
  unread: readonly Unread[] = [],
  breach?: Pick<Breach, "file" | "needsAll">,
): boolean {
  const needs = breach?.needsAll ?? rule.needsAll ?? [];
  return needs.some((need) =>
    unread.some((one) => isOf(need, one) && (!breach || mayTouch(breach.file, one))),
  );
}

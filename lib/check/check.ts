import type { Finding } from "../model/finding.ts";
import type { Rule, RuleInput } from "../model/rule.ts";
import { findingOf } from "../model/told-rule.ts";
import { rules } from "./rules.ts";
import { signed } from "./signed.ts";
import { waits } from "./waits.ts";

const keyOf = ({ rule, place, message }: Finding): string =>
  JSON.stringify([place.file, place.path, rule, message]);
const before = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

function inPlaceOrder(a: Finding, b: Finding): number {
  return (
    before(a.place.file, b.place.file) ||
    before(JSON.stringify(a.place.path), JSON.stringify(b.place.path)) ||
    before(a.rule, b.rule) ||
    before(a.message, b.message)
  );
}

const saidBy = (judged: readonly Rule[], input: RuleInput): Finding[] =>
  judged.flatMap((rule) =>
    [...rule.check(input)]
      .filter((breach) => !waits(rule, input.unread, breach))
      .map((breach) => findingOf(rule, breach, { file: breach.file, path: breach.path })),
  );

/** What the rules say of a library, each thing once, by file, path and rule, signed where a sign-off names it; the rules about sign-offs speak last. None found means that the rules found nothing; it is not a clinical approval. */
export function check(input: RuleInput, judged: readonly Rule[] = rules): Finding[] {
  const last = judged.filter(({ about }) => about === "sign-off");
  const first = saidBy(
    judged.filter((rule) => !last.includes(rule)),
    input,
  );
  const found = [...first, ...saidBy(last, { findings: first, ...input })];
  return [...new Map(found.map((finding) => [keyOf(finding), finding])).values()]
    .map((finding) => signed(input.catalogue, finding))
    .sort(inPlaceOrder);
}

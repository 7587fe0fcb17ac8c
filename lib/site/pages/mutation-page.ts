import { type KeptMutation, mutantKinds } from "../../model/mutation.ts";
import { mutationSums, percent } from "../../model/mutation-sums.ts";
import type { Page } from "../page.ts";
import type { SiteInput } from "../site-input.ts";

/** What the counts were measured on, and whether that is still so. */
function measuredOn({ run, isLibrary, areRules }: KeptMutation): string {
  const which =
    run.sample === 1 ? "every mutant" : `one mutant in ${run.sample} of each kind, evenly spread`;
  const newer = [
    ...(isLibrary ? [] : ["this library is another or has changed since"]),
    ...(areRules ? [] : ["rules have changed since"]),
  ];
  const state =
    newer.length === 0
      ? "Both are those of this site."
      : `These counts are older than this site: ${newer.join(", and ")}.`;
  return `Measured on library ${run.library} with rules ${run.rules}: ${which}. ${state}`;
}

/** What became of a library whose facts were changed one at a time: a row for each kind of change; no page where no run is kept. */
export function mutationPages({ mutation }: SiteInput): readonly Page[] {
  if (mutation === undefined) return [];
  const { run } = mutation;
  const sums = mutationSums(run);
  const numbers = (...all: readonly number[]) => all.map((one) => [{ text: String(one) }]);
  return [
    {
      path: "rules/mutations.html",
      title: "What the rules catch",
      titled: true,
      blocks: [
        {
          kind: "text",
          text: "One fact of the library is changed at a time, and the library is judged again. A change is harmful when some sheet would print other facts. It is caught when a rule says something new that stops or must be signed; what a schema refuses before any rule looks at it is counted apart.",
        },
        { kind: "text", text: measuredOn(mutation) },
        {
          kind: "text",
          text: `Unit slips: ${sums.unit_slips_caught} of ${sums.unit_slips} caught (${percent(sums.unit_slips_caught, sums.unit_slips)} %), ${sums.unit_slips_refused} of them by a schema. The goal is 99 %.`,
        },
        {
          kind: "text",
          text: `Harmful changes that passed the schemas and could be known: ${sums.harmful_caught} of ${sums.harmful} caught by rules (${percent(sums.harmful_caught, sums.harmful)} %). The goal is 95 %.`,
        },
        {
          kind: "table",
          caption: "What became of each kind of change",
          head: [
            "change",
            "made",
            "refused",
            "found by rules",
            "harmful",
            "of these caught",
            "survive",
            "unknowable",
          ],
          rows: run.rows.map((row) => [
            [{ text: mutantKinds[row.kind].title }],
            ...numbers(
              row.mutants,
              row.refused,
              row.caught,
              row.harmful,
              row.harmfulCaught,
              row.harmful - row.harmfulCaught,
              row.unknowable,
            ),
          ]),
        },
        {
          kind: "table",
          caption: "What no rule over a library could know, declared beforehand",
          head: ["change", "why", "met"],
          rows: run.unknowable.map(({ what, why, mutants }) => [
            [{ text: what }],
            [{ text: why }],
            ...numbers(mutants),
          ]),
        },
        { kind: "links", links: [{ text: "All rules", to: "rules/index.html" }] },
      ],
    },
  ];
}

import { howToSign } from "../../model/sign-off.ts";
import type { Link, Page } from "../page.ts";
import type { SiteInput } from "../site-input.ts";

/** A page for each rule, with its examples and what it found here, and the index of all rules. */
export function rulePages({ mutation, rules, findings }: SiteInput): readonly Page[] {
  const pages = rules.map((rule): Page => {
    const found = findings.filter((finding) => finding.rule === rule.id);
    return {
      path: `rules/${rule.id}.html`,
      title: rule.summary,
      titled: true,
      blocks: [
        {
          kind: "facts",
          facts: [
            { name: "Rule", says: [{ text: rule.id }] },
            { name: "Why", says: [{ text: rule.why }] },
            { name: "What to do", says: [{ text: rule.fix }] },
            ...(rule.severity === "sign"
              ? [{ name: "How to sign", says: [{ text: howToSign }] }]
              : []),
            { name: "Severity", says: [{ text: rule.severity }] },
            { name: "Source", says: [{ text: rule.source }] },
          ],
        },
        { kind: "heading", text: "Examples", id: "examples" },
        {
          kind: "table",
          caption: "What passes and what is found",
          head: ["answer", "example"],
          rows: rule.examples.map(({ passes, shows }) => [
            [{ text: passes ? "passes" : "found" }],
            [{ text: shows }],
          ]),
        },
        { kind: "heading", text: "Found in this library", id: "found" },
        found.length > 0
          ? { kind: "links", links: found.map(({ message }) => ({ text: message })) }
          : { kind: "text", text: "Nothing; not a clinical approval." },
      ],
    };
  });
  const rows = rules.map((rule): readonly (readonly Link[])[] => [
    [{ text: rule.summary, to: `rules/${rule.id}.html` }],
    [{ text: rule.severity }],
    [{ text: String(findings.filter(({ rule: id }) => id === rule.id).length) }],
  ]);
  return [
    ...pages,
    {
      path: "rules/index.html",
      title: "Rules",
      titled: true,
      blocks: [
        {
          kind: "table",
          caption: "All rules and what they found in this library",
          head: ["rule", "severity", "found"],
          rows,
        },
        ...(mutation
          ? [
              {
                kind: "links" as const,
                links: [{ text: "What the rules catch", to: "rules/mutations.html" }],
              },
            ]
          : []),
      ],
    },
  ];
}

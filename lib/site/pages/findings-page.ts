import type { Page } from "../page.ts";
import type { SiteInput } from "../site-input.ts";

/** All that the rules found in this library, each with its reason, its mending and its file. */
export function findingsPage({ findings, locate, rules }: SiteInput): Page {
  const told = new Set(rules.map(({ id }) => id));
  return {
    path: "findings/index.html",
    title: "Findings",
    titled: true,
    blocks:
      findings.length === 0
        ? [{ kind: "text", text: "The rules found nothing; not a clinical approval." }]
        : [
            {
              kind: "table",
              caption: "What the rules found in this library",
              head: ["finding", "severity", "signed", "why", "what to do", "file", "rule"],
              rows: findings
                .map(locate)
                .map(({ message, severity, why, fix, place, line, rule, signed }) => [
                  [{ text: message }],
                  [{ text: signed ? "signed" : severity }],
                  [
                    {
                      text: signed
                        ? `${signed.role}, ${signed.date}: ${signed.reason} (${signed.source})`
                        : "",
                    },
                  ],
                  [{ text: why }],
                  [{ text: fix }],
                  [{ text: `${place.file}:${line}` }],
                  [told.has(rule) ? { text: rule, to: `rules/${rule}.html` } : { text: rule }],
                ]),
            },
          ],
  };
}

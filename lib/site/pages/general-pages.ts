import { definitions } from "../../model/definition.ts";
import { howToSign } from "../../model/sign-off.ts";
import type { Link, Page } from "../page.ts";
import type { SiteInput } from "../site-input.ts";

const byText = (a: Link, b: Link): number => (a.text < b.text ? -1 : a.text > b.text ? 1 : 0);

/** Every mark etched on metal, in order, with what carries it. */
export function markRows({ catalogue }: SiteInput): Link[][] {
  const rows = [
    ...[...catalogue.instruments.values()].map(({ id, mark, name }) => ({
      mark,
      text: name,
      to: `instruments/${id}.html`,
    })),
    ...[...catalogue.screws.values()].map(({ id, mark, called }) => ({
      mark,
      text: called,
      to: `screws/${id}.html`,
    })),
    ...[...catalogue.plates.values()].map(({ id, mark, name, side }) => ({
      mark,
      text: side === "none" ? name : `${name}, ${side}`,
      to: `plates/${id}.html`,
    })),
    ...[...catalogue.trays.values()].map(({ id, mark, name }) => ({
      mark,
      text: name,
      to: `trays/${id}.html`,
    })),
  ];
  const order = (row: (typeof rows)[number]): string => `${row.mark} ${row.text}`;
  return rows
    .sort((a, b) => (order(a) < order(b) ? -1 : 1))
    .map(({ mark, text, to }) => [{ text: mark }, { text, to }]);
}

function rulePages({ rules, findings }: SiteInput): Page[] {
  const pages = rules.map((rule): Page => {
    const found = findings.filter((finding) => finding.rule === rule.id);
    return {
      path: `rules/${rule.id}.html`,
      title: rule.summary,
      blocks: [
        { kind: "text", text: `Why: ${rule.why}` },
        { kind: "text", text: `What to do: ${rule.fix}` },
        ...(rule.severity === "sign"
          ? [{ kind: "text", text: `How to sign: ${howToSign}` } as const]
          : []),
        { kind: "text", text: `Severity: ${rule.severity}. Source: ${rule.source}.` },
        { kind: "heading", text: "Examples", id: "examples" },
        {
          kind: "table",
          caption: "What passes and what is found",
          head: ["", "example"],
          rows: rule.examples.map(({ passes, shows }) => [
            { text: passes ? "passes" : "found" },
            { text: shows },
          ]),
        },
        { kind: "heading", text: "Found in this library", id: "found" },
        found.length > 0
          ? { kind: "links", links: found.map(({ message }) => ({ text: message })) }
          : { kind: "text", text: "Nothing; not a clinical approval." },
      ],
    };
  });
  const rows = rules.map((rule): Link[] => [
    { text: rule.summary, to: `rules/${rule.id}.html` },
    { text: rule.severity },
    { text: String(findings.filter(({ rule: id }) => id === rule.id).length) },
  ]);
  return [
    ...pages,
    {
      path: "rules/index.html",
      title: "Rules",
      blocks: [
        {
          kind: "table",
          caption: "All rules and what they found in this library",
          head: ["rule", "severity", "found"],
          rows,
        },
      ],
    },
  ];
}

/** The start page, marks, glossary, rules, findings and the librarian's page. */
export function generalPages(input: SiteInput): Page[] {
  const { catalogue, pdf } = input;
  const list = (
    folder: string,
    entries: Iterable<{ readonly id: string; readonly text: string }>,
  ): Link[] =>
    [...entries].map(({ id, text }) => ({ text, to: `${folder}/${id}.html` })).sort(byText);
  const cases = input.sheets.filter(({ kind }) => kind === "case");
  const caseLinks = [...new Set(cases.map(({ id }) => id))].flatMap((id): Link[] => {
    const sheet = cases.find((one) => one.id === id);
    return sheet ? [{ text: sheet.title, to: `cards/${id}/${sheet.format.id}.html` }] : [];
  });
  return [
    {
      path: "index.html",
      title: catalogue.publisher.logo_text,
      blocks: [
        {
          kind: "doors",
          doors: [
            {
              title: "What is in my hand?",
              text: "Find an instrument or a screw by the mark on its metal.",
              links: [
                { text: "Marks A–Z and search", to: "marks/index.html" },
                ...list(
                  "screws",
                  [...catalogue.screws.values()].map(({ id, called }) => ({ id, text: called })),
                ),
              ],
            },
            {
              title: "Which plate is on the table?",
              text: "Holes, sides, and what belongs to each.",
              links: list(
                "plates",
                [...catalogue.plates.values()].map(({ id, name, side }) => ({
                  id,
                  text: side === "none" ? name : `${name}, ${side}`,
                })),
              ),
            },
            {
              title: "Which tray is open?",
              text: "What lies in which slot, and what looks alike.",
              links: list(
                "trays",
                [...catalogue.trays.values()].map(({ id, name }) => ({ id, text: name })),
              ),
            },
          ],
        },
        { kind: "heading", text: "For education teams", id: "education" },
        {
          kind: "links",
          links: [
            { text: "All cards, with packs to print", to: "cards/index.html" },
            ...list(
              "systems",
              [...catalogue.systems.values()].map(({ id, name }) => ({ id, text: name })),
            ),
          ],
        },
        { kind: "heading", text: "For representatives", id: "representatives" },
        {
          kind: "links",
          links: [
            ...caseLinks,
            ...list(
              "procedures",
              [...catalogue.procedures.values()].map(({ id, name }) => ({ id, text: name })),
            ),
          ],
        },
        { kind: "heading", text: "For hospitals", id: "hospitals" },
        {
          kind: "links",
          links: [
            { text: "How to host this", to: "hosting/index.html" },
            { text: "Everything in one zip", to: "trayleaf-site.zip" },
            { text: "Glossary", to: "glossary/index.html" },
            { text: "Rules and what they found", to: "rules/index.html" },
            { text: "All findings", to: "findings/index.html" },
          ],
        },
      ],
    },
    {
      path: "marks/index.html",
      title: "Marks A–Z",
      blocks: [
        { kind: "search" },
        {
          kind: "table",
          caption: "Marks as etched on the metal",
          head: ["mark", "what it is"],
          rows: markRows(input),
        },
      ],
    },
    {
      path: "glossary/index.html",
      title: "Glossary",
      blocks: [
        {
          kind: "table",
          caption: "Words of the trade",
          head: ["word", "what it means here"],
          rows: [...catalogue.terms.values()].map(({ term, means }) => [
            { text: term },
            { text: means },
          ]),
        },
      ],
    },
    {
      path: "hosting/index.html",
      title: "How to host this",
      blocks: [
        {
          kind: "text",
          text: "Copy this folder, or the zip, to any folder of a web server or shared drive. It needs no server program, no database and no log-in, and asks nothing of any other server.",
        },
        {
          kind: "text",
          text: "To update, replace the whole folder; do not copy new files over old ones, or pages of withdrawn cards stay behind. Take down the printed copies of cards whose issue changed.",
        },
        { kind: "text", text: "If your server can send header lines, send these with every page:" },
        {
          kind: "code",
          text: "Content-Security-Policy: default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; font-src 'self'; connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'\nX-Content-Type-Options: nosniff\nReferrer-Policy: no-referrer\nCache-Control: no-cache",
        },
        { kind: "links", links: [{ text: "Everything in one zip", to: "trayleaf-site.zip" }] },
        {
          kind: "text",
          text: pdf
            ? "PDFs are in the folder pdf, packs in the folder packs."
            : "PDF not built in this preview.",
        },
        { kind: "heading", text: "Schemas, for editors of a library", id: "schemas" },
        {
          kind: "links",
          links: Object.keys(definitions)
            .sort()
            .map((kind) => ({ text: `Schema: ${kind}`, to: `schema/${kind}.json` })),
        },
      ],
    },
    ...rulePages(input),
  ];
}

import { describe, expect, it } from "vitest";
import type { Block, Link } from "../../lib/site/page.ts";
import type { PackContents } from "../../lib/site/render-pack.ts";
import { loses, mutantsOf, readTemplates, renderFrom, tokened } from "./template-mutants.ts";

const link: Link = { text: "drill 2.5", to: "instruments/drill-25.html", note: "slot A2" };
const print: Link = { text: "PDF A4", to: "pdf/card.pdf", label: "PDF A4 landscape: card" };
const plain: Link = { text: "no page" };
const figure = {
  id: "one",
  svg: "<svg/>",
  title: "token-0-end",
  description: "one",
  width: 9,
  height: 9,
  facts: [["drill", "2.5"]] as const,
};
const caution = { id: "one", signal: "CAUTION", text: "Make the last turns by hand." } as const;

const blocks: readonly Block[] = [
  { kind: "text", text: "words" },
  { kind: "heading", text: "Heading", id: "heading" },
  { kind: "links", links: [link, print, plain] },
  { kind: "row", links: [link] },
  {
    kind: "doors",
    doors: [
      {
        id: "door",
        title: "Door",
        text: "What it is",
        figure,
        groups: [{ name: "Group", links: [link] }],
      },
    ],
  },
  { kind: "table", caption: "Table", head: ["part"], rows: [[[link, print]]] },
  { kind: "facts", facts: [{ name: "Mark", says: [link] }] },
  { kind: "steps", steps: [{ say: "Drill.", notes: ["Surgeon decides."], cautions: [caution] }] },
  { kind: "cautions", cautions: [caution] },
  {
    kind: "warnings",
    lines: [
      {
        subject: "Drill 2.5:",
        words: "2 rings;",
        other: { subject: "drill 2.7:", words: "3 rings." },
      },
    ],
  },
  { kind: "figure", figure },
  { kind: "figures", figures: [figure] },
  {
    kind: "cards",
    cards: [
      {
        ...{ title: "Card", issue: "issue C", page: "cards/card.html", thumbnail: "thumbs/c.png" },
        ...{ width: 297, height: 210, prints: [print] },
      },
    ],
  },
  { kind: "sheet", html: "<article>" },
  { kind: "reveal", summary: "Show the answers", html: "<article>" },
  {
    kind: "visions",
    filters: [{ id: "grey", values: "0 0 0" }],
    eyes: ["In grey"],
    rows: [{ name: "threaded", seen: [{ id: "grey", eye: "Seen in grey", symbol: figure }] }],
  },
  {
    kind: "seen",
    ...{ title: "Card", image: "thumbs/c.png", width: 297, height: 210 },
    views: [{ id: "grey", name: "In grey" }],
  },
  { kind: "search" },
  { kind: "code", text: "line" },
];
const kinds = blocks.map(({ kind }) => kind);
const page = {
  leaf: { path: "a.html", title: "Page", titled: true, root: "../", crumbs: [link], blocks },
  site: {
    ...{ language: "en", banner: "INVENTED DATA.", defer: "The surgeon decides.", ask: "Ask" },
    ...{ nav: [link], more: [link] },
  },
};
const contents: PackContents = {
  ...{ title: "All cards", banner: "INVENTED DATA.", defer: "The surgeon decides." },
  ...{ language: "en", paperFormat: "a4-portrait" },
  mark: "pack page 1 of 2",
  entries: [{ anchor: "card-1", title: "Card", page: "2" }],
};

describe.each([
  { name: "site/page.njk", folder: "site", sample: page, least: 60 },
  { name: "packs/contents.njk", folder: "packs", sample: contents, least: 9 },
])("the template $name", ({ name, folder, sample, least }) => {
  const sources = readTemplates([folder]);
  const tokens: string[] = [];
  const view = tokened(sample, tokens, kinds) as object;
  const whole = renderFrom(sources, name, view);
  const mutants = mutantsOf(sources);

  it("has expressions to delete", () => {
    expect(mutants.length).toBeGreaterThan(least);
  });

  it.each(mutants)("loses a word without $title", ({ templates }) => {
    expect(loses(whole, () => renderFrom(templates, name, view))).toBe(true);
  });

  it("escapes what a view holds", () => {
    const html = renderFrom(sources, name, sample);
    expect(
      renderFrom(sources, name, JSON.parse(JSON.stringify(sample).replaceAll("Card", "<b>"))),
    ).toContain("&lt;b&gt;");
    expect(html).not.toMatch(/\sstyle=|<style|\son\w+=|<script>/);
  });
});

import { describe, expect, test } from "vitest";
import { renderSheet } from "../../lib/site/render-sheet.ts";
import { sampleViews } from "./sample-views.ts";
import { loses, mutantsOf, readTemplates, renderFrom, tokened } from "./template-mutants.ts";

const sources = readTemplates(["sheets", "partials"]);
const views = sampleViews.map((sample) => {
  const tokens: string[] = [];
  const view = tokened(sample, tokens, [sample.kind]) as object;
  const name = `sheets/${sample.kind}.njk`;
  return { kind: sample.kind, name, view, tokens, whole: renderFrom(sources, name, view) };
});
const mutants = mutantsOf(sources).map((mutant) => ({
  ...mutant,
  shown: views.filter(({ name }) => mutant.name === name || mutant.name.startsWith("partials/")),
}));

describe("the sheet templates", () => {
  test.each(views)("show every word of a $kind view", (view) => {
    expect(view.tokens.filter((token) => !view.whole.includes(token))).toEqual([]);
  });

  test("have expressions to delete", () => {
    expect(mutants.length).toBeGreaterThan(100);
  });

  test.each(mutants)("lose a word without $title", ({ templates, shown }) => {
    const noticed = ({ whole, name, view }: (typeof views)[number]) =>
      loses(whole, () => renderFrom(templates, name, view));
    expect(shown.some(noticed)).toBe(true);
  });

  test.each(sampleViews)(
    "render a $kind view as one article without style attributes or scripts",
    (view) => {
      const html = renderSheet(view);
      expect(html.match(/<article /g)).toHaveLength(1);
      expect(html).toMatch(
        new RegExp(`<article class="sheet sheet--${view.kind} format--${view.format.id}"`),
      );
      expect(html).not.toMatch(/\sstyle=|<script|<style|\son\w+=/);
    },
  );

  test("escape what a view holds", () => {
    const [first] = sampleViews;
    if (first === undefined) throw new Error("No sample view");
    expect(renderSheet({ ...first, title: "<b>&" })).toContain("<h1>&lt;b&gt;&amp;</h1>");
  });
});

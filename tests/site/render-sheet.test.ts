import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { templateEnvironment, templatesFolder } from "../../lib/site/nunjucks.ts";
import { renderSheet } from "../../lib/site/render-sheet.ts";
import { sampleViews } from "./sample-views.ts";

/** A copy of a view whose every string is a token of its own; a drawing is one token, its SVG. */
function tokened(value: unknown, tokens: string[]): unknown {
  if (typeof value === "string") {
    if (value === "") return "";
    const token = `token-${tokens.length + 1}-end`;
    tokens.push(token);
    return token;
  }
  if (Array.isArray(value)) return value.map((item) => tokened(item, tokens));
  if (typeof value !== "object" || value === null) return value;
  if ("svg" in value) return { ...value, svg: tokened("svg", tokens) };
  return Object.fromEntries(
    Object.entries(value).map(([name, item]) => [name, tokened(item, tokens)]),
  );
}

const sources = new Map(
  readdirSync(templatesFolder, { recursive: true, encoding: "utf8" })
    .filter((name) => /^(sheets|partials)[\\/].*\.njk$/.test(name))
    .map((name) => [
      name.replaceAll("\\", "/"),
      readFileSync(`${templatesFolder}/${name}`, "utf8"),
    ]),
);
const views = sampleViews.map(({ kind, ...view }) => {
  const tokens: string[] = [];
  return { kind, view: { ...(tokened(view, tokens) as object), kind }, tokens };
});
type TokenView = (typeof views)[number];

function render(templates: ReadonlyMap<string, string>, { kind, view }: TokenView): string {
  const loader = {
    getSource: (name: string) => ({ src: templates.get(name) ?? "", path: name, noCache: true }),
  };
  return templateEnvironment(loader).render(`sheets/${kind}.njk`, view);
}

/** How often each token, class and named region stands in a page. */
function told(html: string): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  const words = [
    ...html.matchAll(/token-\d+-end/g),
    ...html.matchAll(/(?:class|data-fit)="[^"]*"/g),
  ].map(([word]) => word);
  for (const word of words) counts.set(word, (counts.get(word) ?? 0) + 1);
  return counts;
}

const whole = new Map(views.map((view) => [view.kind, told(render(sources, view))]));

/** True when a changed template throws or says anything less often than the true one. */
function loses(templates: ReadonlyMap<string, string>, view: TokenView): boolean {
  try {
    const now = told(render(templates, view));
    return [...(whole.get(view.kind) ?? [])].some(([word, count]) => (now.get(word) ?? 0) < count);
  } catch {
    return true;
  }
}

const mutants = [...sources].flatMap(([name, source]) =>
  [...source.matchAll(/\{\{.*?\}\}|\{% (for \w+ in|if) (.*?) %\}/g)].map((found) => {
    const dead =
      found[1] === undefined ? "" : found[1] === "if" ? "{% if false %}" : `{% ${found[1]} [] %}`;
    const mutated =
      source.slice(0, found.index) + dead + source.slice(found.index + found[0].length);
    const shown = views.filter(
      ({ kind }) => name === `sheets/${kind}.njk` || name.startsWith("partials/"),
    );
    return {
      title: `${found[0]} at ${found.index} of ${name}`,
      templates: new Map(sources).set(name, mutated),
      shown,
    };
  }),
);

describe("the sheet templates", () => {
  test.each(views)("show every word of a $kind view", (view) => {
    const html = render(sources, view);
    expect(view.tokens.filter((token) => !html.includes(token))).toEqual([]);
  });

  test("have expressions to delete", () => {
    expect(mutants.length).toBeGreaterThan(100);
  });

  test.each(mutants)("lose a word without $title", ({ templates, shown }) => {
    expect(shown.some((view) => loses(templates, view))).toBe(true);
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

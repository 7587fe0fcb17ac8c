import { readdirSync, readFileSync } from "node:fs";
import { templateEnvironment, templatesFolder } from "../../lib/site/nunjucks.ts";

/** Templates by name, "sheets/case.njk". */
export type Templates = ReadonlyMap<string, string>;

/** A copy of a view whose every string is a token of its own, collected in `tokens`; a drawing's are its SVG and its facts. A `kind` among `kinds`, by which a template chooses, stays. */
export function tokened(value: unknown, tokens: string[], kinds: readonly string[]): unknown {
  if (typeof value === "string") {
    if (value === "") return "";
    const token = `token-${tokens.length + 1}-end`;
    tokens.push(token);
    return token;
  }
  if (Array.isArray(value)) return value.map((item) => tokened(item, tokens, kinds));
  if (typeof value !== "object" || value === null) return value;
  if ("svg" in value) {
    const facts = "facts" in value ? { facts: tokened(value.facts, tokens, kinds) } : {};
    return { ...value, svg: tokened("svg", tokens, kinds), ...facts };
  }
  return Object.fromEntries(
    Object.entries(value).map(([name, item]) => [
      name,
      name === "kind" && kinds.includes(String(item)) ? item : tokened(item, tokens, kinds),
    ]),
  );
}

/** The templates of some folders; front matter, which Eleventy takes off, is taken off here too. */
export function readTemplates(folders: readonly string[]): Templates {
  const names = readdirSync(templatesFolder, { recursive: true, encoding: "utf8" })
    .map((name) => name.replaceAll("\\", "/"))
    .filter((name) => name.endsWith(".njk") && folders.some((one) => name.startsWith(`${one}/`)));
  return new Map(
    names.map((name) => [
      name,
      readFileSync(`${templatesFolder}/${name}`, "utf8").replace(/^---\n[\s\S]*?\n---\n/, ""),
    ]),
  );
}

/** One of some templates with a view. */
export function renderFrom(templates: Templates, name: string, view: object): string {
  const loader = {
    getSource: (path: string) => ({ src: templates.get(path) ?? "", path, noCache: true }),
  };
  return templateEnvironment(loader).render(name, view);
}

/** How often each token, class, size and named region stands in a page. */
function told(html: string): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const [word] of html.matchAll(
    /token-\d+-end|(?:class|data-fit|width|height|viewBox|aria-label)="[^"]*"/g,
  ))
    counts.set(word, (counts.get(word) ?? 0) + 1);
  return counts;
}

/** True when a changed template throws or says anything less often than the true one, whose page is `whole`. */
export function loses(whole: string, changed: () => string): boolean {
  try {
    const now = told(changed());
    return [...told(whole)].some(([word, count]) => (now.get(word) ?? 0) < count);
  } catch {
    return true;
  }
}

/** Every way to delete one expression, loop or condition of the templates. */
export function mutantsOf(
  templates: Templates,
): readonly { readonly title: string; readonly name: string; readonly templates: Templates }[] {
  return [...templates].flatMap(([name, source]) =>
    [...source.matchAll(/\{\{.*?\}\}|\{% (for \w+ in|if|elif) (.*?) %\}/g)].map((found) => {
      const [whole, tag] = found;
      const dead =
        tag === undefined ? "" : `{% ${tag} ${tag.startsWith("for") ? "[]" : "false"} %}`;
      const mutated =
        source.slice(0, found.index) + dead + source.slice(found.index + whole.length);
      return {
        title: `${whole} at ${found.index} of ${name}`,
        name,
        templates: new Map(templates).set(name, mutated),
      };
    }),
  );
}

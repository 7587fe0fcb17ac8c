import type { RuleExample } from "../model/rule.ts";

/** Edits of the reference library in short: "kind/id path.to.0.field" to the value there (YAML units); undefined deletes, no path replaces the whole. */
type Edits = Readonly<Record<string, unknown>>;
/** What an example brings beside its edits. */
type Brought = Pick<RuleExample, "sheets" | "fits" | "today">;

function edit([key, value]: readonly [string, unknown]): RuleExample["edits"][number] {
  const [file = "", path = ""] = key.split(" ");
  const keys = path === "" ? [] : path.split(".");
  return { file, path: keys.map((part) => (/^\d+$/.test(part) ? Number(part) : part)), value };
}

const example =
  (passes: boolean) =>
  (title: string, shows: string, edits: Edits = {}, brought: Brought = {}): RuleExample => ({
    title,
    passes,
    shows,
    edits: Object.entries(edits).map(edit),
    ...brought,
  });

/** An example in which a rule finds nothing. */
export const passes = example(true);
/** An example in which a rule finds something. */
export const fails = example(false);

import type { Catalogue } from "../../lib/model/catalogue.ts";
import { type DefinitionKind, definitions } from "../../lib/model/definition.ts";
import type { RuleExample } from "../../lib/model/rule.ts";
import { referenceLibrary } from "./reference-library.ts";

type Tree = Record<string | number, unknown>;
type Edits = RuleExample["edits"];

const home: Readonly<Record<string, string>> = {
  publisher: "publisher.yaml", interfaces: "interfaces.yaml", system: "systems/pebblefin/system.yaml",
};

function fileOf(kind: DefinitionKind, id: string): string {
  const { folder, scope } = definitions[kind];
  return home[kind] ?? (scope === "library" ? `${folder}/${id}.yaml` : `systems/pebblefin/${folder}/${id}.yaml`);
}

function edit(library: Record<string, unknown>, { file, path, value }: Edits[number]): void {
  let tree = library[file] as Tree | undefined;
  if (tree === undefined) throw new Error(`The reference library has no ${file}`);
  for (const key of path.slice(0, -1)) tree = (tree?.[key] ?? {}) as Tree;
  const last = path.at(-1);
  if (last === undefined || tree === undefined) throw new Error(`An edit of ${file} leads nowhere`);
  if (value === undefined) delete tree[last];
  else tree[last] = value;
}

/** The reference library with an example's edits, through its schemas, as a catalogue. Throws where an edit breaks a schema. */
export function editedLibrary(edits: Edits): Catalogue {
  const library = structuredClone(referenceLibrary) as Record<string, unknown>;
  for (const one of edits) edit(library, one);
  const kinds = new Map<string, Map<string, unknown>>();
  for (const [key, data] of Object.entries(library)) {
    const [kind, id] = key.split("/") as [DefinitionKind, string];
    const facts = definitions[kind].schema.parse(data);
    const system = definitions[kind].scope.startsWith("system") ? "pebblefin" : "";
    kinds.set(kind, (kinds.get(kind) ?? new Map<string, unknown>()).set(id, { ...facts, id, system, file: fileOf(kind, id) }));
  }
  const one = (kind: DefinitionKind): unknown => [...(kinds.get(kind)?.values() ?? [])][0];
  const map = (kind: DefinitionKind): unknown => new Map([...(kinds.get(kind) ?? [])].sort(([a], [b]) => (a < b ? -1 : 1)));
  return {
    publisher: one("publisher"), interfaces: one("interfaces"), systems: map("system"), documents: map("document"), cautions: map("caution"),
    recipes: map("recipe"), terms: map("term"), sites: map("site"), cases: map("case"), zones: map("zone"), openings: map("opening"),
    screws: map("screw"), instruments: map("instrument"), plates: map("plate"), trays: map("tray"), procedures: map("procedure"),
  } as Catalogue;
}

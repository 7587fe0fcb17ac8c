import { type DefinitionKind, definitions } from "../model/definition.ts";
import { nearestName } from "../model/nearest-name.ts";
import { asSlug } from "../model/text.ts";

/** What a path inside the library stands for. */
export type LibraryPlace =
  | { readonly is: "folder" }
  | {
      readonly is: "definition";
      readonly kind: DefinitionKind;
      readonly id: string;
      readonly system: string;
    }
  | {
      readonly is: "unknown";
      readonly known: readonly string[];
      readonly nearest?: string;
      /** The definition it may be meant as. */
      readonly meant?: {
        readonly kind: DefinitionKind;
        readonly id: string;
        readonly system: string;
      };
    };

const kinds = Object.keys(definitions) as DefinitionKind[];
const folders = (scope: string): ReadonlyMap<string, DefinitionKind> =>
  new Map(
    kinds
      .filter((kind) => definitions[kind].scope === scope)
      .map((kind) => [definitions[kind].folder, kind]),
  );
const single = folders("single");
const library = folders("library");
const system = folders("system");
const systemSingle = folders("system-single");

function unknown(name: string, known: readonly string[]): LibraryPlace {
  const nearest = nearestName(name, known);
  return { is: "unknown", known, ...(nearest === undefined ? {} : { nearest }) };
}

function file(
  kinds: ReadonlyMap<string, DefinitionKind>,
  folder: string,
  name: string,
  owner: string,
): LibraryPlace {
  const kind = kinds.get(folder);
  if (!kind) return unknown(folder, [...kinds.keys()]);
  if (name.endsWith(".yaml"))
    return { is: "definition", kind, id: name.slice(0, -5), system: owner };
  const id = asSlug(name.replace(/\..*$/, ""));
  return { is: "unknown", known: [], nearest: `${id}.yaml`, meant: { kind, id, system: owner } };
}

function one(
  kinds: ReadonlyMap<string, DefinitionKind>,
  name: string,
  id: string,
  owner: string,
  also: readonly string[],
): LibraryPlace {
  const kind = kinds.get(name);
  return kind
    ? { is: "definition", kind, id, system: owner }
    : unknown(name, [...kinds.keys(), ...also]);
}

/** The kind, id and system that a file's place tells, or the names that are known there. `path` is relative to the library, split at slashes. */
export function placeInLibrary(path: readonly string[], isFolder: boolean): LibraryPlace {
  const [first = "", second = "", third = "", fourth = ""] = path;
  const folder = (known: readonly string[], name: string): LibraryPlace =>
    known.includes(name) ? { is: "folder" } : unknown(name, known);
  if (isFolder) {
    if (path.length === 1) return folder([...library.keys(), "systems", "general"], first);
    if (path.length === 2 && first === "systems") return { is: "folder" };
    if (path.length === 2 && first === "general") return folder([...system.keys()], second);
    if (path.length === 3 && first === "systems") return folder([...system.keys()], third);
    return unknown(path.at(-1) ?? "", []);
  }
  if (path.length === 1)
    return one(single, first, first.replace(/\.yaml$/, ""), "general", [
      ...library.keys(),
      "systems",
      "general",
    ]);
  if (first === "systems") {
    if (path.length === 3) return one(systemSingle, third, second, second, [...system.keys()]);
    return path.length === 4
      ? file(system, third, fourth, second)
      : unknown(path.at(-1) ?? "", ["system.yaml"]);
  }
  if (first === "general")
    return path.length === 3
      ? file(system, second, third, "general")
      : unknown(path.at(-1) ?? "", []);
  return path.length === 2
    ? file(library, first, second, "general")
    : unknown(path.at(-1) ?? "", []);
}

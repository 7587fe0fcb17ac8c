import {
  type Defined,
  type DefinitionKind,
  type DefinitionOf,
  type Definitions,
  definitions as kinds,
} from "../model/definition.ts";
import { type Reference, references, targets } from "./references.ts";

/** One definition with its kind. */
export type Entry = {
  readonly kind: DefinitionKind;
  readonly facts: Defined<DefinitionOf<DefinitionKind>>;
};
type Path = Reference["path"];

const kindNames = Object.keys(kinds) as DefinitionKind[];
/** Lists that may end up empty; a definition whose other lists do is left out whole. */
const mayEmpty = new Set([
  "permits",
  "cautions",
  "required_cautions",
  "absent",
  "not_checked",
  "empty_lengths",
  "holes",
  "documents",
]);

/** Every definition, kind by kind. */
export function entries(definitions: Definitions): Entry[] {
  return kindNames.flatMap((kind) =>
    [...definitions[kind].values()].map((facts) => ({ kind, facts })),
  );
}

const isCitation = ({ path }: Reference): boolean => path.includes("source");

/** The references that something is built on and that lead nowhere; a citation is read, not built on. */
function lost(definitions: Definitions, { kind, facts }: Entry): Reference[] {
  return references(kind, facts).filter(
    (one) => !isCitation(one) && !targets(definitions, one.target).includes(one.id),
  );
}

/** The innermost list item on the way to a broken reference: where to prune. */
function itemOf(path: Path): Path | undefined {
  const last = path.findLastIndex((key) => typeof key === "number");
  return last < 0 ? undefined : path.slice(0, last + 1);
}

function pruned({ kind, facts }: Entry, broken: readonly Reference[]): Entry["facts"] | undefined {
  const items = broken.map(({ path }) => itemOf(path));
  if (kind === "opening" || items.includes(undefined)) return undefined;
  const copy = structuredClone(facts);
  const places = new Map(items.map((path) => [JSON.stringify(path), path ?? []]));
  const backwards = [...places.values()].sort((a, b) => Number(b.at(-1)) - Number(a.at(-1)));
  for (const path of backwards) {
    const list = path
      .slice(0, -1)
      .reduce<unknown>(
        (at, key) => (at as Record<string | number, unknown>)[key],
        copy,
      ) as unknown[];
    list.splice(Number(path.at(-1)), 1);
    if (list.length === 0 && !mayEmpty.has(String(path.at(-2)))) return undefined;
  }
  return copy;
}

/** What is left of definitions when the bad ones and every mention of them are taken out, and the files that lost something. */
export function closed(
  definitions: Definitions,
  bad: ReadonlySet<string>,
  incomplete: ReadonlySet<string> = new Set(),
): { readonly definitions: Definitions; readonly incomplete: ReadonlySet<string> } {
  const kept = entries(definitions).filter(({ kind, facts }) => !bad.has(`${kind}/${facts.id}`));
  const maps = Object.fromEntries(
    kindNames.map((kind) => [
      kind,
      new Map(kept.filter((entry) => entry.kind === kind).map(({ facts }) => [facts.id, facts])),
    ]),
  );
  const left = { ...maps, refused: definitions.refused } as unknown as Definitions;
  const short = kept
    .map((entry) => ({ entry, broken: lost(left, entry) }))
    .filter(({ broken }) => broken.length > 0);
  if (short.length === 0) return { definitions: left, incomplete };
  const gone = new Set<string>();
  for (const { entry, broken } of short) {
    const facts = pruned(entry, broken);
    if (facts) (maps[entry.kind] as Map<string, unknown>).set(facts.id, facts);
    else gone.add(`${entry.kind}/${entry.facts.id}`);
  }
  return closed(
    left,
    gone,
    new Set([...incomplete, ...short.map(({ entry }) => entry.facts.file)]),
  );
}

import { type Catalogue, known } from "../../model/catalogue.ts";
import type { Derived } from "../../model/chain.ts";
import type { DefinitionKind } from "../../model/definition.ts";
import { definitionsOf } from "../../model/find-definition.ts";
import { partner } from "../../model/look-alike.ts";
import type { Fact } from "../../model/trace.ts";
import { drawnPlate } from "../plate-facts.ts";
import { slotFacts } from "../slot-facts.ts";

/** The facts and what was derived from them. */
export type Traced = { readonly catalogue: Catalogue; readonly derived: Derived };

/** A field of a definition, or with no keys the whole of it. */
export function factOf(
  { catalogue }: Traced,
  kind: DefinitionKind,
  id: string,
  path: Fact["path"] = [],
): Fact {
  return { kind, id, file: known(definitionsOf(catalogue, kind), id).file, path };
}

/** What is asked of a sheet: its kind, its system and what it shows. */
type Shows = { readonly kind: string; readonly system: string; readonly shows: readonly string[] };
type Named = readonly [kind: DefinitionKind, id: string, path?: Fact["path"]];

function ofChain({ catalogue, derived }: Traced, id: string): readonly Named[] {
  const chain = derived.chains.find((one) => one.id === id);
  if (chain === undefined) return [];
  const openings = [...catalogue.openings.values()].filter(({ zones }) =>
    zones.includes(chain.zone),
  );
  return [
    ["zone", chain.zone],
    ["screw", chain.screw],
    ["recipe", chain.recipe],
    ...openings.map(({ id: opening }) => ["opening", opening] as const),
    ...chain.links.flatMap(({ instrument }) =>
      instrument === undefined ? [] : [["instrument", instrument] as const],
    ),
  ];
}

function ofPlate({ catalogue, derived }: Traced, id: string): readonly Named[] {
  const laid = derived.plates.find((one) => one.id === id);
  if (laid === undefined) return [];
  return [
    ["plate", laid.plate],
    ["plate", drawnPlate(catalogue, laid.plate).id],
    ...derived.lookAlikes.flatMap((pair) => {
      const other = partner(pair, laid.plate);
      return other === undefined ? [] : [["plate", other] as const];
    }),
    ...laid.holes.flatMap(({ opening, zones }) => [
      ["opening", opening] as const,
      ...zones.map(({ zone }) => ["zone", zone] as const),
    ]),
  ];
}

function ofTray({ catalogue }: Traced, id: string): readonly Named[] {
  const kinds = { instrument: "instrument", rack: "screw", plate: "plate" } as const;
  const { slots } = known(catalogue.trays, id);
  return [
    ["tray", id],
    ...slots.map((slot) => [kinds[slot.holds], slotFacts(catalogue, slot).id] as const),
  ];
}

function ofCase({ catalogue }: Traced, id: string): readonly Named[] {
  const { site } = known(catalogue.cases, id);
  const { trays } = known(catalogue.sites, site);
  return [["case", id], ["site", site], ...trays.map(({ tray }) => ["tray", tray] as const)];
}

/** A screw on a length sheet: its gauge, and the policy of its system for its class. */
function ofScrew({ catalogue, derived }: Traced, id: string, isLadder: boolean): readonly Named[] {
  const { system, class: kind } = known(catalogue.screws, id);
  const table = derived.lengthTables.get(id);
  if (!isLadder || table === undefined) return [["screw", id]];
  return [
    ["screw", id],
    ["instrument", table.gauge],
    ["system", system, ["length_policy", kind === "locking" ? "locking" : "plain_head"]],
  ];
}

/** The ids of one kind that a sheet says it shows. */
export const idsShown = ({ shows }: Pick<Shows, "shows">, kind: string): readonly string[] =>
  shows.flatMap((name) => {
    const [own, id = ""] = name.split("/");
    return own === kind ? [id] : [];
  });

function shown(traced: Traced, sheet: Shows, name: string): readonly Named[] {
  const [kind, id = ""] = name.split("/");
  if (kind === "chain") return ofChain(traced, id);
  if (kind === "plate") return ofPlate(traced, id);
  if (kind === "tray") return ofTray(traced, id);
  if (kind === "case") return ofCase(traced, id);
  if (kind === "screw") return ofScrew(traced, id, sheet.kind === "lengths");
  return [[kind as DefinitionKind, id]];
}

/** What makes two facts the same. */
export const factKey = ({ kind, id, path }: Fact): string => [kind, id, ...path].join("/");

/** Every definition a sheet was made from, each once, in order of kind and id; the registry where a part of it is drawn. */
export function usesOf(traced: Traced, sheet: Shows): readonly Fact[] {
  const body = sheet.shows.flatMap((name) => shown(traced, sheet, name));
  const isDrawn = body.some(([kind]) => kind === "instrument" || kind === "screw");
  const all: readonly Named[] = [
    ["publisher", traced.catalogue.publisher.id],
    ...[...traced.catalogue.systems.keys()]
      .filter((id) => id === sheet.system || sheet.system === "general")
      .map((id) => ["system", id] as const),
    ...(isDrawn ? [["interfaces", traced.catalogue.interfaces.id] as const] : []),
    ...body,
  ];
  const facts = all.map(([kind, id, path]) => factOf(traced, kind, id, path));
  const byKey = new Map(facts.map((fact) => [factKey(fact), fact]));
  return [...byKey.entries()].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, fact]) => fact);
}

import type { Catalogue } from "./catalogue.ts";
import type { DefinitionKind } from "./definition.ts";

/** A definition of any kind, as its identity. */
export type AnyDefinition = {
  readonly id: string;
  readonly system: string;
  readonly file: string;
};

/** All definitions of one kind by id. */
export function definitionsOf(
  catalogue: Catalogue,
  kind: DefinitionKind,
): ReadonlyMap<string, AnyDefinition> {
  const one = (definition: AnyDefinition): ReadonlyMap<string, AnyDefinition> =>
    new Map([[definition.id, definition]]);
  const maps: Readonly<Record<DefinitionKind, ReadonlyMap<string, AnyDefinition>>> = {
    publisher: one(catalogue.publisher),
    interfaces: one(catalogue.interfaces),
    system: catalogue.systems,
    document: catalogue.documents,
    caution: catalogue.cautions,
    recipe: catalogue.recipes,
    term: catalogue.terms,
    mishap: catalogue.mishaps,
    site: catalogue.sites,
    case: catalogue.cases,
    "sign-off": catalogue.signOffs,
    zone: catalogue.zones,
    opening: catalogue.openings,
    screw: catalogue.screws,
    instrument: catalogue.instruments,
    plate: catalogue.plates,
    tray: catalogue.trays,
    procedure: catalogue.procedures,
  };
  return maps[kind];
}

import type { Defined } from "./definition.ts";
import type { Instrument } from "./instrument.ts";
import type { Interfaces } from "./interfaces.ts";
import type { Mishap } from "./mishap.ts";
import type { Plate } from "./plate.ts";
import type { Publisher, SourceDocument } from "./publisher.ts";
import type { Caution, Procedure, Recipe } from "./recipe.ts";
import type { Screw } from "./screw.ts";
import type { SignOff } from "./sign-off.ts";
import type { Case, Site, Term } from "./site.ts";
import type { System } from "./system.ts";
import type { Tray } from "./tray.ts";
import type { Opening, Zone } from "./zone.ts";

/** All definitions of a library with every reference known to exist, each map in id order. */
export type Catalogue = {
  readonly publisher: Defined<Publisher>;
  readonly interfaces: Defined<Interfaces>;
  readonly systems: ReadonlyMap<string, Defined<System>>;
  readonly documents: ReadonlyMap<string, Defined<SourceDocument>>;
  readonly cautions: ReadonlyMap<string, Defined<Caution>>;
  readonly mishaps: ReadonlyMap<string, Defined<Mishap>>;
  readonly recipes: ReadonlyMap<string, Defined<Recipe>>;
  readonly terms: ReadonlyMap<string, Defined<Term>>;
  readonly sites: ReadonlyMap<string, Defined<Site>>;
  readonly cases: ReadonlyMap<string, Defined<Case>>;
  readonly signOffs: ReadonlyMap<string, Defined<SignOff>>;
  readonly zones: ReadonlyMap<string, Defined<Zone>>;
  readonly openings: ReadonlyMap<string, Defined<Opening>>;
  readonly screws: ReadonlyMap<string, Defined<Screw>>;
  readonly instruments: ReadonlyMap<string, Defined<Instrument>>;
  readonly plates: ReadonlyMap<string, Defined<Plate>>;
  readonly trays: ReadonlyMap<string, Defined<Tray>>;
  readonly procedures: ReadonlyMap<string, Defined<Procedure>>;
};

/** The entry of a map that resolving has shown to exist; throws (our own fault) when it does not. */
export function known<T>(map: ReadonlyMap<string, T>, id: string): T {
  const found = map.get(id);
  if (found === undefined) throw new Error(`No definition "${id}" after resolving`);
  return found;
}

import type { Catalogue } from "../../model/catalogue.ts";
import type { Role } from "../../model/chain.ts";
import type { Defined } from "../../model/definition.ts";
import type { Instrument, InstrumentKind, InstrumentOf } from "../../model/instrument.ts";
import type { Query, Recipe } from "../../model/recipe.ts";
import type { Screw } from "../../model/screw.ts";
import type { Zone } from "../../model/zone.ts";

/** One screw in one zone by one technique: what a chain of instruments is asked for. */
export type Work = {
  readonly catalogue: Catalogue;
  readonly zone: Defined<Zone>;
  readonly screw: Defined<Screw>;
  readonly recipe: Defined<Recipe>;
};

/** What one link must be, with the instruments that were settled before it. */
export type Ask = Work & {
  readonly query: Query;
  readonly settled: ReadonlyMap<Role, Defined<Instrument>>;
};

/** Why a candidate falls out, with its numbers in mm or N·m; undefined where it fits. */
export type Criterion<K extends InstrumentKind> = (
  candidate: Defined<InstrumentOf<K>>,
  ask: Ask,
) => string | undefined;

/** Everything an instrument of one kind must meet, by name. */
export type Criteria<K extends InstrumentKind> = Readonly<Record<string, Criterion<K>>>;

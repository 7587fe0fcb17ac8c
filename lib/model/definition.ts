import type { z } from "zod";
import { Instrument } from "./instrument.ts";
import { Interfaces } from "./interfaces.ts";
import { Mishap } from "./mishap.ts";
import { Plate } from "./plate.ts";
import { Publisher, SourceDocument } from "./publisher.ts";
import { Caution, Procedure, Recipe } from "./recipe.ts";
import { Screw } from "./screw.ts";
import { SignOff } from "./sign-off.ts";
import { Case, Site, Term } from "./site.ts";
import { System } from "./system.ts";
import { Tray } from "./tray.ts";
import { Opening, Zone } from "./zone.ts";

/** Every kind of definition: the folder it lives in decides which schema reads it.
 * scope "library": content/<folder>/<id>.yaml (or content/<folder>.yaml for single files);
 * scope "system": content/systems/<system>/<folder>/<id>.yaml, or content/general/<folder>/<id>.yaml for parts of no system. */
export const definitions = {
  publisher: { folder: "publisher.yaml", scope: "single", schema: Publisher },
  interfaces: { folder: "interfaces.yaml", scope: "single", schema: Interfaces },
  system: { folder: "system.yaml", scope: "system-single", schema: System },
  document: { folder: "documents", scope: "library", schema: SourceDocument },
  caution: { folder: "cautions", scope: "library", schema: Caution },
  mishap: { folder: "mishaps", scope: "library", schema: Mishap },
  recipe: { folder: "recipes", scope: "library", schema: Recipe },
  term: { folder: "glossary", scope: "library", schema: Term },
  site: { folder: "sites", scope: "library", schema: Site },
  case: { folder: "cases", scope: "library", schema: Case },
  "sign-off": { folder: "sign-offs", scope: "library", schema: SignOff },
  zone: { folder: "zones", scope: "system", schema: Zone },
  opening: { folder: "openings", scope: "system", schema: Opening },
  screw: { folder: "screws", scope: "system", schema: Screw },
  instrument: { folder: "instruments", scope: "system", schema: Instrument },
  plate: { folder: "plates", scope: "system", schema: Plate },
  tray: { folder: "trays", scope: "system", schema: Tray },
  procedure: { folder: "procedures", scope: "system", schema: Procedure },
} as const satisfies Record<
  string,
  { folder: string; scope: "single" | "library" | "system" | "system-single"; schema: z.ZodType }
>;
export type DefinitionKind = keyof typeof definitions;
/** The typed definition of one kind. */
export type DefinitionOf<K extends DefinitionKind> = z.output<(typeof definitions)[K]["schema"]>;

/** A definition with its identity: id from the file's name, system from its folder ("general" for none). */
export type Defined<T> = T & {
  readonly id: string;
  readonly system: string;
  readonly file: string;
};

/** What is still known of a definition that was refused, or that lost something to a fault elsewhere; `sort` is an instrument's kind. */
export type Unread = {
  readonly kind: DefinitionKind;
  readonly system: string;
  readonly sort?: string;
};

/** Every definition that validated, by kind and id in code-unit order; `refused` holds by "kind/id" those that exist but were refused. */
export type Definitions = {
  readonly [K in DefinitionKind]: ReadonlyMap<string, Defined<DefinitionOf<K>>>;
} & { readonly refused: ReadonlyMap<string, Unread> };

import type { DefinitionKind, DefinitionOf, Definitions } from "../model/definition.ts";
import type { Source } from "../model/source.ts";

type Path = readonly (string | number)[];
/** What can be named: a definition, a noun of the interface registry, or a family of plates. */
export type Target = DefinitionKind | "head thread" | "drive" | "coupling" | "plate family";
/** One id that a definition names, and where. */
export type Reference = { readonly path: Path; readonly target: Target; readonly id: string };

const to = (target: Target, id: string | undefined, ...path: Path): Reference[] =>
  id === undefined ? [] : [{ path, target, id }];
const each = (target: Target, ids: readonly string[], ...path: Path): Reference[] =>
  ids.map((id, index) => ({ path: [...path, index], target, id }));
const among = <T>(
  items: readonly T[],
  path: string,
  inner: (item: T, ...at: Path) => Reference[],
): Reference[] => items.flatMap((item, index) => inner(item, path, index));

function cited(source: Source | undefined, ...path: Path): Reference[] {
  if (source === undefined) return [];
  return [
    ...to("document", source.document, ...path, "document"),
    ...Object.entries(source.fields ?? {}).flatMap(([field, { document }]) =>
      to("document", document, ...path, "fields", field, "document"),
    ),
  ];
}

const cautions = (facts: { cautions: string[]; required_cautions: string[] }): Reference[] => [
  ...each("caution", facts.cautions, "cautions"),
  ...each("caution", facts.required_cautions, "required_cautions"),
];

function instrument(facts: DefinitionOf<"instrument">): Reference[] {
  return [
    ...("coupling" in facts ? to("coupling", facts.coupling, "coupling") : []),
    ...(facts.kind === "torque-limiter"
      ? [
          ...to("coupling", facts.coupling_in, "coupling_in"),
          ...to("coupling", facts.coupling_out, "coupling_out"),
        ]
      : []),
    ...(facts.kind === "threaded-sleeve" ? to("head thread", facts.thread, "thread") : []),
    ...(facts.kind === "driver-shaft" ? to("drive", facts.drive, "drive") : []),
    ...(facts.kind === "removal-kit" ? each("drive", facts.drives, "drives") : []),
    ...cited(facts.source, "source"),
  ];
}

function plate(facts: DefinitionOf<"plate">): Reference[] {
  if ("mirror_of" in facts)
    return [...to("plate", facts.mirror_of, "mirror_of"), ...cited(facts.source, "source")];
  return [
    ...to("opening", facts.row.opening, "row", "opening"),
    ...among(facts.holes, "holes", ({ opening }, ...at) =>
      to("opening", opening, ...at, "opening"),
    ),
    ...among(facts.schedule ?? [], "schedule", ({ opening }, ...at) =>
      to("opening", opening, ...at, "opening"),
    ),
    ...cited(facts.source, "source"),
  ];
}

const of: { readonly [K in DefinitionKind]: (facts: DefinitionOf<K>) => Reference[] } = {
  publisher: ({ source }) => cited(source, "source"),
  interfaces: ({ source }) => cited(source, "source"),
  term: () => [],
  document: ({ system, superseded_by }) => [
    ...to("system", system === "general" ? undefined : system, "system"),
    ...to("document", superseded_by, "superseded_by"),
  ],
  system: ({ documents, length_policy: { locking, plain_head }, source }) => [
    ...cited(source, "source"),
    ...each("document", documents, "documents"),
    ...(locking ? cited(locking.source, "length_policy", "locking", "source") : []),
    ...(plain_head ? cited(plain_head.source, "length_policy", "plain_head", "source") : []),
  ],
  caution: ({ source }) => cited(source, "source"),
  mishap: ({ source }) => cited(source, "source"),
  recipe: (facts) => [
    ...cautions(facts),
    ...among(facts.steps, "steps", (step, ...at) =>
      each("caution", step.cautions, ...at, "cautions"),
    ),
    ...cited(facts.source, "source"),
  ],
  site: ({ trays, source }) => [
    ...cited(source, "source"),
    ...among(trays, "trays", ({ tray, absent, not_checked, empty_lengths }, ...at) => [
      ...to("tray", tray, ...at, "tray"),
      ...each("instrument", absent, ...at, "absent"),
      ...each("instrument", not_checked, ...at, "not_checked"),
      ...empty_lengths.flatMap(({ screw }, index) =>
        to("screw", screw, ...at, "empty_lengths", index, "screw"),
      ),
    ]),
  ],
  case: ({ plate, site, procedure, plan, source }) => [
    ...cited(source, "source"),
    ...to("plate", plate, "plate"),
    ...to("site", site, "site"),
    ...to("procedure", procedure, "procedure"),
    ...among(plan, "plan", ({ zone, screw, recipe }, ...at) => [
      ...to("zone", zone, ...at, "zone"),
      ...to("screw", screw, ...at, "screw"),
      ...to("recipe", recipe, ...at, "recipe"),
    ]),
  ],
  "sign-off": ({ source }) => to("document", source.document, "source", "document"),
  zone: (facts) => [
    ...(facts.kind === "threaded" ? to("head thread", facts.thread, "thread") : []),
    ...("permits" in facts ? each("screw", facts.permits, "permits") : []),
    ...cited(facts.source, "source"),
  ],
  opening: ({ zones, source }) => [...each("zone", zones, "zones"), ...cited(source, "source")],
  screw: ({ head, drive, source }) => [
    ...(head.form === "threaded" ? to("head thread", head.thread, "head", "thread") : []),
    ...to("drive", drive, "drive"),
    ...cited(source, "source"),
  ],
  instrument,
  plate,
  tray: ({ slots, source }) => [
    ...among(slots, "slots", (slot, ...at) =>
      slot.holds === "instrument"
        ? to("instrument", slot.instrument, ...at, "instrument")
        : slot.holds === "rack"
          ? to("screw", slot.screw, ...at, "screw")
          : to("plate", slot.plate, ...at, "plate"),
    ),
    ...cited(source, "source"),
  ],
  procedure: (facts) => [
    ...to("procedure", facts.goes_on_with, "goes_on_with"),
    ...each("plate family", facts.families, "families"),
    ...cautions(facts),
    ...among(facts.steps, "steps", (step, ...at) => [
      ...each("caution", step.cautions, ...at, "cautions"),
      ...(step.fills
        ? [
            ...to("recipe", step.fills.recipe, ...at, "fills", "recipe"),
            ...to("screw", step.fills.screw, ...at, "fills", "screw"),
            ...to("zone", step.fills.zone, ...at, "fills", "zone"),
          ]
        : []),
    ]),
    ...cited(facts.source, "source"),
  ],
};

/** Every id that a definition of this kind names. */
export function references<K extends DefinitionKind>(kind: K, facts: DefinitionOf<K>): Reference[] {
  return of[kind](facts);
}

/** Every id that may be named, by what it is. */
export function targets(definitions: Definitions, target: Target): readonly string[] {
  const registry = [...definitions.interfaces.values()][0];
  if (target === "head thread") return Object.keys(registry?.head_threads ?? {});
  if (target === "drive") return Object.keys(registry?.drives ?? {});
  if (target === "coupling") return Object.keys(registry?.couplings ?? {});
  if (target === "plate family")
    return [
      ...new Set(
        [...definitions.plate.values()].flatMap((plate) =>
          "family" in plate ? [plate.family] : [],
        ),
      ),
    ];
  return [...definitions[target].keys()];
}

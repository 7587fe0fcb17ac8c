import { type Catalogue, known } from "../../model/catalogue.ts";
import type { Chain } from "../../model/chain.ts";
import type { Rule, RuleInput } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";

const source = { document: "pebblefin-ifu", section: "Table 1" };

type Kind = readonly [
  map: ReadonlyMap<string, { readonly id: string; readonly file: string; readonly system: string }>,
  what: string,
  used: readonly (string | undefined)[],
];

/** Every kind of definition with the ids by which others use it. Tools of no chain (forceps, wires, levers, removal kits) are used by hand. */
function kinds(
  { zones, openings, plates, screws, instruments, recipes, cautions, procedures }: Catalogue,
  chains: readonly Chain[],
): readonly Kind[] {
  const byHand = [...instruments.values()].filter(({ kind }) =>
    ["forceps", "wire", "bending-tool", "removal-kit"].includes(kind),
  );
  const techniques = [...recipes.values(), ...procedures.values()];
  return [
    [
      screws,
      "permitted in no hole",
      [...zones.values()].flatMap((zone) => ("permits" in zone ? zone.permits : [])),
    ],
    [zones, "part of no opening", [...openings.values()].flatMap((opening) => opening.zones)],
    [
      openings,
      "an opening of no plate",
      [...plates.values()].flatMap((plate) =>
        "row" in plate ? [plate.row.opening, ...plate.holes.map(({ opening }) => opening)] : [],
      ),
    ],
    [
      instruments,
      "used by no chain",
      [
        ...byHand.map(({ id }) => id),
        ...chains.flatMap(({ links }) => links.map(({ instrument }) => instrument)),
      ],
    ],
    [recipes, "a technique for no screw and hole", chains.map(({ recipe }) => recipe)],
    [
      cautions,
      "printed on no card",
      techniques.flatMap(({ cautions: own, required_cautions, steps }) => [
        ...own,
        ...required_cautions,
        ...steps.flatMap((step) => step.cautions),
      ]),
    ],
  ];
}

/** While a chain is open, nothing can be said of the instruments and techniques that would close it. */
function* unused({ catalogue, derived }: RuleInput) {
  const open = new Set(derived.gaps.map(({ screw }) => known(catalogue.screws, screw).system));
  const { instruments, recipes } = catalogue;
  for (const [map, what, ids] of kinds(catalogue, derived.chains)) {
    const used = new Set(ids);
    for (const { id, file, system } of map.values()) {
      const waits = (map === instruments && open.has(system)) || (map === recipes && open.size > 0);
      if (!used.has(id) && system !== "general" && !waits)
        yield { file, path: [], message: `Expected a use for ${id}, got one ${what}` };
    }
  }
}

/** Nothing lies in the library that nothing else uses. */
export const everyPartIsUsed: Rule = {
  id: "every-part-is-used",
  severity: "note",
  about: "chain",
  summary:
    "Every screw is permitted somewhere, every zone, opening, technique and caution is used, and every instrument is in a chain or among the general ones.",
  why: "What nothing uses is left over from an older set, or what should use it was forgotten.",
  fix: "Use it, put it among the general instruments, or delete it.",
  source: "common practice",
  needsAll: ["caution", "instrument", "opening", "plate", "procedure", "recipe", "screw", "zone"],
  check: unused,
  examples: [
    passes(
      "a general instrument",
      "The countersink is used in no hole of a plate; it is among the general instruments.",
    ),
    passes(
      "a chain that is open",
      "No drill 2.6 for locking 3.5: sleeve 3.5 would be used if there were one.",
      { "screw/locking-35 pilot": 2.6 },
    ),
    fails("a screw no hole permits", "No hole permits locking 2.7.", {
      "zone/threaded-27 permits": [],
    }),
    fails("a caution on no card", "No technique names the caution.", {
      "caution/broken-piece": {
        signal: "NOTICE",
        text: "Keep both pieces.",
        why: "They are counted.",
        source,
      },
    }),
  ],
};

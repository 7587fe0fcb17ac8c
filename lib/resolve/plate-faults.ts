import type { Defined, Definitions } from "../model/definition.ts";
import type { DrawnPlate, Plate } from "../model/plate.ts";
import type { Case } from "../model/site.ts";
import type { Tray } from "../model/tray.ts";
import type { ResolvingRule } from "./resolving-rules.ts";

/** Something a definition says of a plate that the plate does not bear out. */
export type PlateFault = {
  readonly rule: ResolvingRule;
  readonly path: readonly (string | number)[];
  readonly message: string;
  readonly fix?: string;
};

/** The drawn plate a plate is, or is the mirror of; undefined where that is unknown. */
function drawn(definitions: Definitions, id: string): DrawnPlate | undefined {
  const plate = definitions.plate.get(id);
  const shown = plate && "mirror_of" in plate ? definitions.plate.get(plate.mirror_of) : plate;
  return shown && "row" in shown ? shown : undefined;
}

/** The opening at every label of a plate in the length variant with so many holes in its row. */
function openingsByLabel(plate: DrawnPlate, holes: number): ReadonlyMap<string, string> {
  const row = Array.from({ length: holes }, (_, index): [string, string] => [
    `${plate.row.prefix}${index + 1}`,
    plate.row.opening,
  ]);
  return new Map([
    ...row,
    ...plate.holes.map(({ label, opening }): [string, string] => [label, opening]),
  ]);
}

const known = (labels: Iterable<string | number>, what: string): string =>
  `Known ${what}: ${[...labels].join(", ")}.`;

/** A plate by itself: labels used once and known, and a mirror of the other side. */
export function plateFaults(definitions: Definitions, plate: Defined<Plate>): PlateFault[] {
  if ("mirror_of" in plate) {
    const from = definitions.plate.get(plate.mirror_of);
    if (!from) return [];
    if ("mirror_of" in from)
      return [
        {
          rule: "mirror",
          path: ["mirror_of"],
          message: `Expected a drawn plate, got "${from.id}", which is itself a mirror`,
        },
      ];
    const other = plate.side === "left" ? "right" : "left";
    return from.side === other
      ? []
      : [
          {
            rule: "mirror",
            path: ["side"],
            message: `Expected the other side of "${from.id}" (${from.side}), got ${plate.side}`,
          },
        ];
  }
  const longest = Math.max(...plate.variants.map(({ holes }) => holes));
  const labels = openingsByLabel(plate, longest);
  const unknown = (label: string, ...path: (string | number)[]): PlateFault[] =>
    labels.has(label)
      ? []
      : [
          {
            rule: "label",
            path,
            message: `Unknown hole "${label}"`,
            fix: known(labels.keys(), "holes"),
          },
        ];
  const seen = new Set<string>();
  return [
    ...plate.holes.flatMap(({ label }, index): PlateFault[] => {
      const twice =
        seen.has(label) ||
        (label.startsWith(plate.row.prefix) && Number(label.slice(1)) <= longest);
      seen.add(label);
      return twice
        ? [{ rule: "label", path: ["holes", index, "label"], message: `Duplicate hole "${label}"` }]
        : [];
    }),
    ...Object.keys(plate.row.exceptions ?? {}).flatMap((label) =>
      unknown(label, "row", "exceptions", label),
    ),
    ...plate.bend_zones.flatMap(({ between }, index) =>
      between.flatMap((label, end) => unknown(label, "bend_zones", index, "between", end)),
    ),
  ];
}

function variantFaults(
  plate: DrawnPlate | undefined,
  holes: number,
  ...path: (string | number)[]
): PlateFault[] {
  if (!plate || plate.variants.some((variant) => variant.holes === holes)) return [];
  return [
    {
      rule: "variant",
      path,
      message: `Unknown length variant ${holes}`,
      fix: known(
        plate.variants.map((variant) => variant.holes),
        "numbers of holes",
      ),
    },
  ];
}

/** The plates of a tray come in the lengths it lists. */
export function trayFaults(definitions: Definitions, tray: Tray): PlateFault[] {
  return tray.slots.flatMap((slot, index) =>
    slot.holds === "plate"
      ? variantFaults(drawn(definitions, slot.plate), slot.holes, "slots", index, "holes")
      : [],
  );
}

/** The holes and zones of a case's plan are the plate's. */
export function caseFaults(
  definitions: Definitions,
  { plate: id, holes, plan }: Case,
): PlateFault[] {
  const plate = drawn(definitions, id);
  const wrongVariant = variantFaults(plate, holes, "holes");
  if (!plate || wrongVariant.length > 0) return wrongVariant;
  const labels = openingsByLabel(plate, holes);
  return plan.flatMap(({ hole, zone }, index): PlateFault[] => {
    const opening = labels.get(hole);
    if (opening === undefined)
      return [
        {
          rule: "label",
          path: ["plan", index, "hole"],
          message: `Unknown hole "${hole}"`,
          fix: known(labels.keys(), "holes"),
        },
      ];
    const zones = definitions.opening.get(opening)?.zones;
    if (!zones || zones.includes(zone)) return [];
    return [
      {
        rule: "zoneOfHole",
        path: ["plan", index, "zone"],
        message: `Expected a zone of hole ${hole} (${zones.join(", ")}), got "${zone}"`,
      },
    ];
  });
}

import type { Defined, Definitions } from "../model/definition.ts";
import type { DrawnPlate, Plate } from "../model/plate.ts";
import type { Case } from "../model/site.ts";
import type { Tray } from "../model/tray.ts";
import type { ResolvingRule } from "./resolving-rules.ts";

/** Something a definition says of a plate that the plate does not bear out. */
export type PlateFault = { readonly rule: ResolvingRule; readonly path: readonly (string | number)[]; readonly message: string; readonly fix?: string };

/** The drawn plate a plate is, or is the mirror of; undefined where that is unknown. */
function drawn(definitions: Definitions, id: string): DrawnPlate | undefined {
  const plate = definitions.plate.get(id);
  const shown = plate && "mirror_of" in plate ? definitions.plate.get(plate.mirror_of) : plate;
  return shown && "row" in shown ? shown : undefined;
}

/** The label of every hole of a plate in its longest variant. */
function labelsOf({ row, holes }: DrawnPlate, longest: number): ReadonlySet<string> {
  return new Set([...Array.from({ length: longest }, (_, index) => `${row.prefix}${index + 1}`), ...holes.map(({ label }) => label)]);
}

const known = (labels: Iterable<string | number>, what: string): string => `Known ${what}: ${[...labels].join(", ")}.`;

/** A plate by itself: labels used once and known, and no mirror of a mirror. */
export function plateFaults(definitions: Definitions, plate: Defined<Plate>): PlateFault[] {
  if ("mirror_of" in plate) {
    const from = definitions.plate.get(plate.mirror_of);
    if (!from) return [];
    return "mirror_of" in from ? [{ rule: "mirror", path: ["mirror_of"], message: `Expected a drawn plate, got "${from.id}", which is itself a mirror` }] : [];
  }
  const longest = Math.max(...plate.variants.map(({ holes }) => holes));
  const labels = labelsOf(plate, longest);
  const unknown = (label: string, ...path: (string | number)[]): PlateFault[] =>
    labels.has(label) ? [] : [{ rule: "label", path, message: `Unknown hole "${label}"`, fix: known(labels, "holes") }];
  const seen = new Set<string>();
  return [
    ...plate.holes.flatMap(({ label }, index): PlateFault[] => {
      const twice = seen.has(label) || (label.startsWith(plate.row.prefix) && Number(label.slice(1)) <= longest);
      seen.add(label);
      return twice ? [{ rule: "label", path: ["holes", index, "label"], message: `Duplicate hole "${label}"` }] : [];
    }),
    ...Object.keys(plate.row.exceptions ?? {}).flatMap((label) => unknown(label, "row", "exceptions", label)),
    ...plate.bend_zones.flatMap(({ between }, index) => between.flatMap((label, end) => unknown(label, "bend_zones", index, "between", end))),
  ];
}

function variantFaults(plate: DrawnPlate | undefined, holes: number, ...path: (string | number)[]): PlateFault[] {
  if (!plate || plate.variants.some((variant) => variant.holes === holes)) return [];
  return [{ rule: "variant", path, message: `Unknown length variant ${holes}`, fix: known(plate.variants.map((variant) => variant.holes), "numbers of holes") }];
}

/** The plates of a tray come in the lengths it lists. */
export function trayFaults(definitions: Definitions, tray: Tray): PlateFault[] {
  return tray.slots.flatMap((slot, index) => (slot.holds === "plate" ? variantFaults(drawn(definitions, slot.plate), slot.holes, "slots", index, "holes") : []));
}

/** The plate of a case comes in the length it names; whether its holes are the plate's is for the rules. */
export function caseFaults(definitions: Definitions, { plate, holes }: Case): PlateFault[] {
  return variantFaults(drawn(definitions, plate), holes, "holes");
}

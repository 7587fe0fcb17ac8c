import { type Catalogue, known } from "../../model/catalogue.ts";
import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";
import { keptOtherwise } from "../kept-otherwise.ts";

/** A part that belongs to neither the system nor the general trays, by name; undefined for a part that does. */
function stranger(
  map: ReadonlyMap<string, { readonly name: string; readonly system: string }>,
  id: string,
  system: string,
): string | undefined {
  const part = known(map, id);
  return part.system === system || part.system === "general"
    ? undefined
    : `${part.name} of ${part.system}`;
}

function* foreign(catalogue: Catalogue) {
  for (const zone of catalogue.zones.values())
    for (const [index, screw] of ("permits" in zone ? zone.permits : []).entries())
      yield {
        of: zone,
        field: "permits",
        path: ["permits", index],
        got: stranger(catalogue.screws, screw, zone.system),
      };
  for (const opening of catalogue.openings.values())
    for (const [index, zone] of opening.zones.entries())
      yield {
        of: opening,
        field: "zones",
        path: ["zones", index],
        got: stranger(catalogue.zones, zone, opening.system),
      };
  for (const plate of catalogue.plates.values())
    if ("row" in plate) {
      yield {
        of: plate,
        field: "row",
        path: ["row", "opening"],
        got: stranger(catalogue.openings, plate.row.opening, plate.system),
      };
      for (const [index, { opening }] of plate.holes.entries())
        yield {
          of: plate,
          field: "holes",
          path: ["holes", index, "opening"],
          got: stranger(catalogue.openings, opening, plate.system),
        };
    }
  for (const procedure of catalogue.procedures.values())
    for (const [index, { fills }] of procedure.steps.entries())
      if (fills)
        yield {
          of: procedure,
          field: "steps",
          path: ["steps", index, "fills", "screw"],
          got: stranger(catalogue.screws, fills.screw, procedure.system),
        };
}

/** Plates, holes and screws that are used together are of one system, and so of one maker and generation. */
export const partsAreOfOneSystem: Rule = {
  id: "parts-are-of-one-system",
  severity: "stop",
  about: "plate",
  summary: "A hole permits screws of its own system only, and a plate has openings of its own.",
  why: "Parts of two makers or generations look as if they fit; their threads and seats were never made for one another.",
  fix: "Name a part of the same system, or cite the section of the instructions for use that says otherwise (source.fields).",
  source: "common practice",
  *check({ catalogue }) {
    for (const { of, field, path, got } of foreign(catalogue))
      if (got !== undefined)
        yield {
          file: of.file,
          path,
          severity: keptOtherwise(catalogue, of, field),
          message: `Expected a part of ${of.system}, got ${got}`,
        };
  },
  examples: [
    passes("one system", "Threaded part 3.5 and locking 3.5 are both of Pebblefin."),
    fails(
      "a screw of another system",
      "Threaded part 3.5 of Pebblefin permits a screw of another maker.",
      {
        "zone/threaded-other@other": {
          kind: "threaded",
          name: "threaded part of another system",
          through: 4.1,
          thread: "th-35",
          permits: ["locking-35"],
          source: { document: "pebblefin-ifu", section: "Table 1" },
        },
      },
    ),
  ],
};

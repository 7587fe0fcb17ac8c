import { known } from "../../model/catalogue.ts";
import { mm } from "../../model/measure.ts";
import type { Rule } from "../../model/rule.ts";
import type { Zone } from "../../model/zone.ts";
import { fails, passes } from "../example.ts";

/** What a screw meets in a zone; equal words take equal screws. */
function meets(zone: Zone): string | undefined {
  if (zone.kind === "threaded") return `thread ${zone.thread}, ${mm(zone.through)} wide`;
  if ("seat" in zone) return `${zone.seat_form} seat ${mm(zone.seat)}, ${mm(zone.through)} wide`;
  return undefined;
}

const twin = {
  "zone/round-35": {
    kind: "plain-round",
    name: "plain round hole 3.5",
    through: 4.2,
    seat: 6.4,
    seat_form: "spherical",
    permits: ["cortical-35"],
    source: { document: "pebblefin-ifu", section: "Table 1" },
  },
};

/** Holes that are alike where a screw meets them permit the same screws. */
export const alikeHolesPermitAlike: Rule = {
  id: "alike-holes-permit-alike",
  severity: "sign",
  about: "screw",
  summary:
    "Two parts of holes of one system with the same width and the same seat, or the same thread, permit the same screws.",
  why: "A screw that fits both and is permitted in one only was most often forgotten in the other; the card then says it is wrong where it is not, or has no row for it.",
  fix: "Compare permits with the instructions for use; sign where these permit the screw in one of the two only.",
  source: "common practice",
  *check({ catalogue }) {
    const zones = [...catalogue.zones.values()];
    for (const [index, zone] of zones.entries())
      for (const other of zones.slice(index + 1)) {
        if (!("permits" in zone && "permits" in other) || zone.system !== other.system) continue;
        if (meets(zone) !== meets(other)) continue;
        const odd = [
          ...zone.permits.filter((screw) => !other.permits.includes(screw)),
          ...other.permits.filter((screw) => !zone.permits.includes(screw)),
        ];
        for (const screw of odd)
          yield {
            file: (zone.permits.includes(screw) ? other : zone).file,
            path: ["permits"],
            message: `Expected ${known(catalogue.screws, screw).called} in both ${zone.name} and ${other.name} (${meets(zone)}), or in neither`,
          };
      }
  },
  examples: [
    passes("alike and alike", "Oblong and round, 4.2 wide, seat 6.4: cortical 3.5.", twin),
    fails("forgotten in one", "The round one permits nothing, the oblong one cortical 3.5.", {
      ...twin,
      "zone/round-35": { ...twin["zone/round-35"], permits: [] },
    }),
    passes("a thousandth apart", "The round one is 4.201 wide: another hole.", {
      ...twin,
      "zone/round-35": { ...twin["zone/round-35"], through: 4.201, permits: [] },
    }),
  ],
};

import type { Catalogue } from "../model/catalogue.ts";
import type { ScrewTrap } from "../model/chain.ts";
import { inIdOrder } from "./in-id-order.ts";

/** Every screw of the library whose thread passes a zone that does not permit it, in id order of zone and screw. */
export function screwTraps(catalogue: Catalogue): readonly ScrewTrap[] {
  return inIdOrder(catalogue.zones).flatMap((zone) =>
    inIdOrder(catalogue.screws)
      .filter(
        ({ id, major }) =>
          major <= zone.through && !("permits" in zone && zone.permits.includes(id)),
      )
      .map(
        (screw): ScrewTrap => ({
          zone: zone.id,
          zoneSystem: zone.system,
          screw: screw.id,
          screwSystem: screw.system,
          head: screw.head.diameter > zone.through ? "lodges" : "falls-through",
        }),
      ),
  );
}

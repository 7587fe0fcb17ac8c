import type { Catalogue } from "../model/catalogue.ts";
import type { Derived } from "../model/chain.ts";
import { rackLengths } from "../model/rack-lengths.ts";
import { deriveChains } from "./chains.ts";
import { doubleNumbers } from "./double-numbers.ts";
import { drawnPlate } from "./drawn-plate.ts";
import { drillTraps } from "./drill-traps.ts";
import { inIdOrder } from "./in-id-order.ts";
import { layPlate } from "./lay-plate.ts";
import { lengthTables } from "./length-tables.ts";
import { lookAlikes } from "./look-alikes.ts";
import { screwTraps } from "./screw-traps.ts";
import { soundAlikes } from "./sound-alikes.ts";

/** Everything that follows from a library's facts, the same whatever order its maps are in. */
export function derive(catalogue: Catalogue): Derived {
  const { chains, gaps } = deriveChains(catalogue);
  const plates = inIdOrder(catalogue.plates).flatMap((plate) => {
    const sizes = drawnPlate(catalogue, plate).variants.map(({ holes }) => holes);
    return [...new Set(sizes)]
      .sort((a, b) => a - b)
      .map((holes) => layPlate(plate, holes, catalogue));
  });
  const tables = lengthTables(catalogue, chains);
  return {
    chains,
    gaps,
    screwTraps: screwTraps(catalogue),
    drillTraps: drillTraps(catalogue, chains),
    lengthTables: tables,
    lookAlikes: lookAlikes(catalogue, plates),
    doubleNumbers: doubleNumbers(catalogue),
    soundAlikes: new Map(
      inIdOrder(catalogue.screws).map((screw) => [
        screw.id,
        soundAlikes(catalogue.publisher.language, [
          ...rackLengths(screw),
          ...(tables.get(screw.id)?.readings ?? []).map(({ reading }) => reading),
        ]),
      ]),
    ),
    plates,
  };
}

import type { Catalogue } from "../model/catalogue.ts";
import type { LookAlike } from "../model/chain.ts";
import type { LaidPlate } from "../model/laid-plate.ts";
import { instrumentLookAlikes } from "./alike/instrument-look-alikes.ts";
import { plateLookAlikes } from "./alike/plate-look-alikes.ts";
import { scored } from "./alike/score.ts";
import { screwLookAlikes } from "./alike/screw-look-alikes.ts";

/** Pairs within one system that are taken for one another, each once and weighed, the worst first; of equals, drills first, then what guides and drives, then screws and plates. */
export function lookAlikes(
  catalogue: Catalogue,
  plates: readonly LaidPlate[],
): readonly LookAlike[] {
  const all = [...catalogue.systems.keys()]
    .sort()
    .flatMap((system) => [
      ...instrumentLookAlikes(catalogue, system),
      ...screwLookAlikes(catalogue, system),
      ...plateLookAlikes(catalogue, system, plates),
    ]);
  return [...new Map(all.map((pair) => [`${pair.a} ${pair.b}`, pair])).values()]
    .map((pair) => scored(catalogue, plates, pair))
    .sort((a, b) => b.score - a.score);
}

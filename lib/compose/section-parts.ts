import { drilledBy } from "../model/bone-depth.ts";
import { known } from "../model/catalogue.ts";
import type { Chain } from "../model/chain.ts";
import type { SectionParts } from "../model/figure.ts";
import type { Composing } from "./composing.ts";
import { drawnPlate } from "./plate-facts.ts";

/** What a chain's cut view is drawn from: its screw, its hole, and the thickest plate that has the hole; nothing where no plate has. */
export function sectionParts(
  { catalogue, derived }: Composing,
  chain: Chain,
): SectionParts | undefined {
  const holed = derived.plates
    .filter(({ system }) => system === chain.system)
    .flatMap(({ plate, holes }) => {
      const { thickness } = drawnPlate(catalogue, plate);
      return holes
        .filter(({ zones }) => zones.some(({ zone }) => zone === chain.zone))
        .map(({ region }) => ({ plate, thick: thickness[region] ?? thickness.shaft }));
    })
    .sort((a, b) => b.thick - a.thick || (a.plate < b.plate ? -1 : a.plate > b.plate ? 1 : 0));
  const [first] = holed;
  if (first === undefined) return undefined;
  const { pilot: depth } = drilledBy(known(catalogue.recipes, chain.recipe).steps);
  return {
    screw: known(catalogue.screws, chain.screw),
    zone: known(catalogue.zones, chain.zone),
    plateName: known(catalogue.plates, first.plate).name,
    plateThickness: first.thick,
    ...(depth ? { depth } : {}),
  };
}

import { type Catalogue, known } from "../model/catalogue.ts";
import type { Derived } from "../model/chain.ts";
import type { Figure, MapShown, Pictures } from "../model/figure.ts";
import type { LaidPlate } from "../model/laid-plate.ts";

/** The other side of a plate in the same length; undefined for a plate without. */
export function otherSide(
  catalogue: Catalogue,
  { plates }: Pick<Derived, "plates">,
  plate: LaidPlate,
): LaidPlate | undefined {
  const own = known(catalogue.plates, plate.plate);
  const mirror = [...catalogue.plates.values()].find(
    (one) => "mirror_of" in one && one.mirror_of === own.id,
  );
  const id = "mirror_of" in own ? own.mirror_of : mirror?.id;
  return plates.find((one) => one.plate === id && one.holesInRow === plate.holesInRow);
}

/** Maps of a pair are drawn anew at most so often to come to one scale. */
const rounds = 6;

/** A plate's map at the scale at which that of its other side can be drawn on the same paper (mm) too, so that left and right lie
 * side by side at one scale. */
export function pairedMap(
  { plateMap }: Pick<Pictures, "plateMap">,
  id: string,
  [plate, other]: readonly [LaidPlate, LaidPlate | undefined],
  size: { readonly width: number; readonly height: number },
  shown: MapShown,
): Figure {
  let own = plateMap(id, plate, size, shown);
  if (other === undefined) return own;
  let twin = plateMap(`${id}-other-side`, other, size, shown);
  for (let round = 0; round < rounds && own.scale !== twin.scale; round += 1) {
    const most = Math.min(own.scale ?? 0, twin.scale ?? 0);
    own = plateMap(id, plate, size, { ...shown, most });
    twin = plateMap(`${id}-other-side`, other, size, { ...shown, most });
  }
  return own;
}

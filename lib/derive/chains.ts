import { type Catalogue, known } from "../model/catalogue.ts";
import type { Chain, ChainGap } from "../model/chain.ts";
import { closeChain } from "./close-chain.ts";
import { inIdOrder } from "./in-id-order.ts";
import type { Work } from "./links/ask.ts";

/** True where a technique is one for this kind of hole and screw, and both have what it needs. */
function suits({ zone, screw, recipe }: Work): boolean {
  if (
    !recipe.zone_kinds.some((kind) => kind === zone.kind) ||
    !recipe.screw_classes.includes(screw.class)
  )
    return false;
  const has = {
    travel: "travel" in zone && zone.travel > 0,
    gliding: screw.gliding !== undefined,
    "partial-thread": screw.thread.extent === "partial",
  };
  return recipe.needs.every((need) => has[need]);
}

/** Every permitted screw in every zone by every technique that suits both. Nothing here asks what order the library lies in. */
function works(catalogue: Catalogue): readonly Work[] {
  return inIdOrder(catalogue.zones).flatMap((zone) =>
    [...new Set("permits" in zone ? zone.permits : [])].sort().flatMap((id) =>
      inIdOrder(catalogue.recipes)
        .map((recipe): Work => ({ catalogue, zone, screw: known(catalogue.screws, id), recipe }))
        .filter(suits),
    ),
  );
}

/** The one chain of instruments for each screw, zone and technique, and a gap for each link that has no answer or more than one; in id order. */
export function deriveChains(catalogue: Catalogue): {
  readonly chains: readonly Chain[];
  readonly gaps: readonly ChainGap[];
} {
  const closed = works(catalogue).map(closeChain);
  return { chains: closed.map(({ chain }) => chain), gaps: closed.flatMap(({ gaps }) => gaps) };
}

import { type Catalogue, known } from "../model/catalogue.ts";
import type { Chain, Role } from "../model/chain.ts";
import type { Defined } from "../model/definition.ts";
import type { Recipe } from "../model/recipe.ts";
import type { RuleInput } from "../model/rule.ts";
import type { Screw } from "../model/screw.ts";
import type { Zone } from "../model/zone.ts";

/** One screw in one zone by one technique, whether or not its chain of instruments could be closed. */
export type Work = {
  readonly catalogue: Catalogue;
  readonly system: string;
  readonly zone: Defined<Zone>;
  readonly screw: Defined<Screw>;
  readonly recipe: Defined<Recipe>;
  readonly chain?: Chain;
  /** The instruments asked for, in hand-over order. */
  readonly roles: readonly Role[];
};

/** Every work of a library, from its chains and from the gaps that kept a chain open. */
export function works({ catalogue, derived }: RuleInput): readonly Work[] {
  const chains = new Map(derived.chains.map((chain) => [chain.id, chain]));
  const ids = new Set([...chains.keys(), ...derived.gaps.map(({ chain }) => chain)]);
  return [...ids].flatMap((id) => {
    const chain = chains.get(id);
    const open = derived.gaps.filter((gap) => gap.chain === id);
    const from = chain ?? open[0];
    if (from === undefined) return [];
    return {
      catalogue,
      system: from.system,
      zone: known(catalogue.zones, from.zone),
      screw: known(catalogue.screws, from.screw),
      recipe: known(catalogue.recipes, from.recipe),
      ...(chain ? { chain } : {}),
      roles: [
        ...new Set([
          ...(chain?.links ?? []).map(({ role }) => role),
          ...open.map(({ role }) => role),
        ]),
      ],
    };
  });
}

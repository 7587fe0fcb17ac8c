import { known } from "../model/catalogue.ts";
import type { Chain, Link, Role } from "../model/chain.ts";
import type { Query } from "../model/recipe.ts";
import type { Composing } from "./composing.ts";
import { grouped } from "./grouped.ts";

/** Chains of one screw that hand over exactly the same things, whatever hole or technique they serve. */
export type ChainGroup = {
  readonly screw: string;
  readonly chains: readonly [Chain, ...Chain[]];
  /** What the techniques add to what is called out; empty for the plain one. */
  readonly phrase: string;
};

/** The link of a role, if the chain has one. */
export function linkOf(chain: Chain, ...roles: readonly Role[]): Link | undefined {
  return chain.links.find(({ role }) => roles.includes(role));
}

/** The link that answers a query of the chain's technique. */
export function linkFor(chain: Chain, query: Query | undefined): Link | undefined {
  const asked = JSON.stringify(query);
  return chain.links.find((link) => JSON.stringify(link.query) === asked);
}

/** True for a chain that bores a gliding hole first. */
export function isLag(chain: Chain): boolean {
  return linkOf(chain, "gliding-drill") !== undefined;
}

function handOver({ links }: Chain): string {
  return links
    .map(({ role, instrument, end, required }) => [role, instrument, end, required].join(":"))
    .join(" ");
}

function phraseOf({ catalogue }: Composing, chains: readonly Chain[]): string {
  const phrases = new Set(
    chains.map(({ recipe }) => known(catalogue.recipes, recipe).phrase ?? ""),
  );
  return phrases.has("") ? "" : [...phrases].join(" or ");
}

/** Distinct chains, small screws before large and locking before plain-head, the plain technique before its variants. */
export function chainGroups(composing: Composing, chains: readonly Chain[]): readonly ChainGroup[] {
  const { screws } = composing.catalogue;
  const order = ({ screw, phrase }: ChainGroup): string => {
    const { major, class: kind } = known(screws, screw);
    return [String(major).padStart(6, "0"), kind === "locking" ? 0 : 1, screw, phrase].join(" ");
  };
  return [...grouped(chains, (chain) => `${chain.screw} ${handOver(chain)}`).values()]
    .map(
      (group): ChainGroup => ({
        screw: group[0].screw,
        chains: group,
        phrase: phraseOf(composing, group),
      }),
    )
    .sort((a, b) => (order(a) < order(b) ? -1 : 1));
}

/** What is called out for a group ("Screw 3.5 cortical, as lag screw"). */
export function calledOut({ catalogue }: Composing, { screw, phrase }: ChainGroup): string {
  const { called } = known(catalogue.screws, screw);
  return phrase === "" ? called : `${called}, ${phrase}`;
}

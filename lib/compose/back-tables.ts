import { known } from "../model/catalogue.ts";
import type { Chain, LookAlike } from "../model/chain.ts";
import type { BackTable, Figure } from "../model/figure.ts";
import { partner, seenOn } from "../model/look-alike.ts";
import type { Composing } from "./composing.ts";
import { nounAndNumber } from "./spoken.ts";

type Item = BackTable["groups"][number]["items"][number];

const width = 250;

/** What an instrument is taken for among those held, and what tells it from each. */
function alikeOf(
  pairs: readonly LookAlike[],
  id: string,
  held: ReadonlySet<string>,
): Pick<Item, "alike" | "alikeWith"> {
  const own = pairs.flatMap((pair) => {
    const other = partner(pair, id);
    return other !== undefined && held.has(other) ? [{ other, seen: seenOn(pair, id) }] : [];
  });
  return {
    alike: [...new Set(own.map(({ seen }) => seen))].join("; "),
    alikeWith: own.map(({ other }) => other),
  };
}

/** The step of a technique at which an instrument is first asked for; after all steps where none asks for it. */
function stepOf({ catalogue }: Composing, chain: Chain, id: string): number {
  const { steps } = known(catalogue.recipes, chain.recipe);
  const asked = chain.links.filter(({ instrument }) => instrument === id);
  const queries = new Set(asked.map(({ query }) => JSON.stringify(query)));
  const first = steps.findIndex(({ uses, also }) =>
    [...(uses ? [uses] : []), ...also].some((query) => queries.has(JSON.stringify(query))),
  );
  return first < 0 ? steps.length : first;
}

/** What a procedure hands over: its screws in order of use, each instrument under the first screw that needs it. */
function backTableOf(composing: Composing, procedure: string): BackTable {
  const { catalogue, derived } = composing;
  const { name, steps } = known(catalogue.procedures, procedure);
  const chains = steps.flatMap(({ fills }): readonly Chain[] => {
    const found = derived.chains.find(
      ({ zone, screw, recipe }) =>
        zone === fills?.zone && screw === fills.screw && recipe === fills.recipe,
    );
    return found === undefined ? [] : [found];
  });
  const used = chains.map((chain) => ({
    chain,
    tools: chain.links.flatMap(({ instrument }) => instrument ?? []),
  }));
  const held = new Set(used.flatMap(({ tools }) => tools));
  const laid = new Set<string>();
  const groups = used.flatMap(({ chain, tools }) => {
    const fresh = [...new Set(tools)].filter((id) => !laid.has(id));
    for (const id of fresh) laid.add(id);
    if (fresh.length === 0) return [];
    const items = fresh.map((id) => {
      const instrument = known(catalogue.instruments, id);
      const { noun, number } = nounAndNumber(instrument);
      return {
        instrument,
        words: [noun, number] as const,
        step: stepOf(composing, chain, id),
        ...alikeOf(derived.lookAlikes, id, held),
      };
    });
    return [{ called: known(catalogue.screws, chain.screw).called, items }];
  });
  return { name, groups };
}

/** The back table of a procedure from the scrub side and from the opposite side; nothing where it hands over nothing. */
export function backTables(composing: Composing, procedure: string): readonly Figure[] {
  const table = backTableOf(composing, procedure);
  if (table.groups.length === 0) return [];
  const { catalogue, pictures } = composing;
  return (["scrub side", "opposite side"] as const).map((side) =>
    pictures.backTable(
      `table-${procedure}-${side === "scrub side" ? "near" : "far"}`,
      table,
      catalogue.interfaces,
      { width, side },
    ),
  );
}

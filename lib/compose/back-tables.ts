import { known } from "../model/catalogue.ts";
import type { Chain, LookAlike } from "../model/chain.ts";
import type { BackTable, Figure } from "../model/figure.ts";
import type { Composing } from "./composing.ts";
import { nounAndNumber } from "./spoken.ts";

const width = 250;

function tellOf(pairs: readonly LookAlike[], id: string, held: ReadonlySet<string>): string {
  const pair = pairs.find(({ a, b }) => (a === id && held.has(b)) || (b === id && held.has(a)));
  return pair === undefined ? "" : ((pair.b === id ? pair.tellOfB : undefined) ?? pair.tell);
}

/** What a procedure hands over: its screws in order of use, each instrument under the first screw that needs it. */
function backTableOf({ catalogue, derived }: Composing, procedure: string): BackTable {
  const { name, steps } = known(catalogue.procedures, procedure);
  const chains = steps.flatMap(({ fills }): readonly Chain[] => {
    const found = derived.chains.find(
      ({ zone, screw, recipe }) =>
        zone === fills?.zone && screw === fills.screw && recipe === fills.recipe,
    );
    return found === undefined ? [] : [found];
  });
  const used = chains.map(({ screw, links }) => ({
    screw,
    tools: links.flatMap(({ instrument }) => instrument ?? []),
  }));
  const held = new Set(used.flatMap(({ tools }) => tools));
  const laid = new Set<string>();
  const groups = used.flatMap(({ screw, tools }) => {
    const fresh = [...new Set(tools)].filter((id) => !laid.has(id));
    for (const id of fresh) laid.add(id);
    if (fresh.length === 0) return [];
    const items = fresh.map((id) => {
      const instrument = known(catalogue.instruments, id);
      const { noun, number } = nounAndNumber(instrument);
      return {
        instrument,
        words: [noun, number] as const,
        alike: tellOf(derived.lookAlikes, id, held),
      };
    });
    return [{ called: known(catalogue.screws, screw).called, items }];
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

import { known } from "../../model/catalogue.ts";
import type { Rule } from "../../model/rule.ts";
import { works } from "../work.ts";

/** The trays of a system, as packed, hold every instrument and screw its chains need. */
export const trayHoldsEveryInstrument: Rule = {
  id: "tray-holds-every-instrument",
  severity: "stop",
  about: "tray",
  summary:
    "Every instrument in a chain and every screw it drives lies in a tray of that system, or in a general one.",
  why: "Missing instruments are among the commonest delays in theatre; the card must not call for what no tray holds.",
  fix: "Put the part into a slot of the tray that the maker's list gives it.",
  source: "J Am Coll Surg 2014;219:646 (instrument errors in theatre)",
  needsAll: ["tray"],
  *check(input) {
    const { catalogue } = input;
    const held = new Set(
      [...catalogue.trays.values()].flatMap(({ system, slots }) =>
        slots.map(
          (slot) =>
            `${system} ${slot.holds === "instrument" ? slot.instrument : slot.holds === "rack" ? slot.screw : slot.plate}`,
        ),
      ),
    );
    const lies = (system: string, part: string): boolean =>
      held.has(`${system} ${part}`) || held.has(`general ${part}`);
    const trayed = new Set([...catalogue.trays.values()].map(({ system }) => system));
    for (const { id, file, name } of catalogue.systems.values()) {
      if (!trayed.has(id))
        yield { file, path: ["tray_revision"], message: `Missing a tray of ${name}` };
    }
    const told = new Set<string>();
    for (const { system, screw, chain } of works(input)) {
      const tools = (chain?.links ?? []).flatMap(({ instrument }) =>
        instrument === undefined ? [] : known(catalogue.instruments, instrument),
      );
      for (const part of [screw, ...tools]) {
        if (!trayed.has(system) || lies(system, part.id) || told.has(`${system} ${part.id}`))
          continue;
        told.add(`${system} ${part.id}`);
        const wanted = part === screw ? "a hole permits it" : `${screw.called} needs it`;
        yield {
          file: part.file,
          path: ["name"],
          message: `Missing ${part.name}: ${wanted} and no tray of ${system} holds it`,
        };
      }
    }
  },
  examples: [
    {
      title: "every instrument has its slot",
      passes: true,
      shows: "Sleeve 3.5 lies in slot B1 of the small tray.",
      edits: [],
    },
    {
      title: "a slot that holds something else",
      passes: false,
      shows: "The slot of sleeve 3.5 holds sleeve 2.7: no tray has sleeve 3.5.",
      edits: [{ file: "tray/small", path: ["slots", 0, "instrument"], value: "countersink-35" }],
    },
  ],
};

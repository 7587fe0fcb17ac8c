import { known } from "../../model/catalogue.ts";
import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";

/** Of every pilot drill that a screw needs there are two. */
export const pilotDrillHasASpare: Rule = {
  id: "pilot-drill-has-a-spare",
  severity: "sign",
  about: "tray",
  summary: "A pilot drill that a chain uses lies in the trays at least twice.",
  why: "Of the instruments that break, most are drills. A broken drill without a second one ends the case or begins it with the wrong one.",
  fix: "Pack a second drill, or sign who decided that one is enough.",
  source:
    "Price et al., Int Orthop 2002;26:185; Sanchez, Patient Safety 2024 (10.33940/001c.124086)",
  *check({ catalogue, derived }) {
    const used = new Set(
      derived.chains.flatMap(({ links }) =>
        links.flatMap(({ role, instrument }) =>
          role === "pilot-drill" && instrument ? [instrument] : [],
        ),
      ),
    );
    const slots = [...catalogue.trays.values()].flatMap((tray) =>
      tray.slots.flatMap((slot, index) =>
        slot.holds === "instrument" ? [{ ...slot, file: tray.file, index }] : [],
      ),
    );
    for (const id of used) {
      const [first, ...more] = slots.filter(({ instrument }) => instrument === id);
      if (first === undefined || more.length > 0 || first.quantity > 1) continue;
      yield {
        file: first.file,
        path: ["slots", first.index, "quantity"],
        message: `Expected 2 or more of ${known(catalogue.instruments, id).name}, got 1: no spare`,
      };
    }
  },
  examples: [
    passes("a second drill", "Drill 2.5: 2 pieces."),
    fails("one drill", "Drill 2.5: 1 piece.", { "tray/small slots.3.quantity": 1 }),
  ],
};

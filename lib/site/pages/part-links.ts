import { known } from "../../model/catalogue.ts";
import { plateName } from "../../model/plate-name.ts";
import type { Link } from "../page.ts";
import type { SiteInput } from "../site-input.ts";

type Catalogued = Pick<SiteInput, "catalogue">;

/** An instrument by its name. */
export const instrumentLink = ({ catalogue }: Catalogued, id: string): Link => ({
  text: known(catalogue.instruments, id).name,
  to: `instruments/${id}.html`,
});

/** A screw as it is called out. */
export const screwLink = ({ catalogue }: Catalogued, id: string): Link => ({
  text: known(catalogue.screws, id).called,
  to: `screws/${id}.html`,
});

/** A plate by its name and side. */
export function plateLink({ catalogue }: Catalogued, id: string): Link {
  return { text: plateName(known(catalogue.plates, id)), to: `plates/${id}.html` };
}

/** A tray by its name. */
export const trayLink = ({ catalogue }: Catalogued, id: string): Link => ({
  text: known(catalogue.trays, id).name,
  to: `trays/${id}.html`,
});

/** A technique by its name. */
export const techniqueLink = ({ catalogue }: Catalogued, id: string): Link => ({
  text: known(catalogue.recipes, id).name,
  to: `techniques/${id}.html`,
});

/** A procedure by its name. */
export const procedureLink = ({ catalogue }: Catalogued, id: string): Link => ({
  text: known(catalogue.procedures, id).name,
  to: `procedures/${id}.html`,
});

/** A system by its name; parts of no system belong to none that has a page. */
export function systemLink({ catalogue }: Catalogued, id: string): Link {
  const system = catalogue.systems.get(id);
  return system
    ? { text: system.name, to: `systems/${id}.html` }
    : { text: "General, for every system" };
}

/** The instrument, screw, plate or tray of an id. */
export function partLink(input: Catalogued, id: string): Link {
  const { instruments, screws, plates } = input.catalogue;
  if (instruments.has(id)) return instrumentLink(input, id);
  if (screws.has(id)) return screwLink(input, id);
  return plates.has(id) ? plateLink(input, id) : trayLink(input, id);
}

/** Where a part lies: each tray with its slots. */
export function placesOf({ catalogue }: Catalogued, id: string): readonly Link[] {
  return [...catalogue.trays.values()].flatMap((tray) => {
    const slots = tray.slots.filter(
      (slot) =>
        (slot.holds === "instrument" && slot.instrument === id) ||
        (slot.holds === "rack" && slot.screw === id) ||
        (slot.holds === "plate" && slot.plate === id),
    );
    if (slots.length === 0) return [];
    const where = slots.map(({ slot }) => slot).join(", ");
    return [{ ...trayLink({ catalogue }, tray.id), note: `slot ${where}` }];
  });
}

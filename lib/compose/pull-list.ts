import { known } from "../model/catalogue.ts";
import type { Chain } from "../model/chain.ts";
import type { Defined } from "../model/definition.ts";
import { plateTitle } from "../model/plate-name.ts";
import type { CaseView } from "../model/sheet.ts";
import type { Case, Site } from "../model/site.ts";
import type { Composing } from "./composing.ts";
import { slotFacts } from "./slot-facts.ts";
import { spoken } from "./spoken.ts";

type Line = CaseView["pull"][number];
type Place = { readonly place: string; readonly status: Line["status"] };

/** The place of a part that no tray of the site holds. */
export const inNoTray = "in no tray of this site";

function placesOf(
  { catalogue }: Composing,
  site: Site,
  part: string,
  holes?: number,
): readonly Place[] {
  return site.trays.flatMap((instance) => {
    const tray = known(catalogue.trays, instance.tray);
    const slot = tray.slots.find(
      (one) =>
        slotFacts(catalogue, one).id === part &&
        (holes === undefined || one.holds !== "plate" || one.holes === holes),
    );
    if (slot === undefined) return [];
    const status = instance.absent.includes(part)
      ? "missing"
      : instance.not_checked.includes(part)
        ? "not checked"
        : "in tray";
    return [{ place: `${tray.name}, slot ${slot.slot}`, status }] as const;
  });
}

function lineOf(what: string, places: readonly Place[]): Line {
  const best =
    places.find(({ status }) => status === "in tray") ??
    places.find(({ status }) => status === "not checked") ??
    places[0];
  return { what, place: best?.place ?? inNoTray, status: best?.status ?? "missing" };
}

/** What a case needs, each part once, with its place and state in the trays as they stand at the site. */
export function pullList(
  composing: Composing,
  facts: Defined<Case>,
  chains: readonly Chain[],
): readonly Line[] {
  const { catalogue } = composing;
  const site = known(catalogue.sites, facts.site);
  const instruments = [
    ...new Set(chains.flatMap(({ links }) => links.flatMap(({ instrument }) => instrument ?? []))),
  ];
  const needed = new Set(
    chains.flatMap(({ links }) =>
      links.flatMap(({ instrument, required }) => (required && instrument ? instrument : [])),
    ),
  );
  const screws = [...new Set(facts.plan.map(({ screw }) => screw))];
  return [
    lineOf(
      plateTitle(known(catalogue.plates, facts.plate), facts.holes),
      placesOf(composing, site, facts.plate, facts.holes),
    ),
    ...screws.map((id) =>
      lineOf(known(catalogue.screws, id).called, placesOf(composing, site, id)),
    ),
    ...instruments.map((id) => {
      const name = spoken(known(catalogue.instruments, id));
      return lineOf(needed.has(id) ? name : `${name}, if asked`, placesOf(composing, site, id));
    }),
  ];
}

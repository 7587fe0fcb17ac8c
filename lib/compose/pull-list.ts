import { known } from "../model/catalogue.ts";
import type { Chain } from "../model/chain.ts";
import type { Defined } from "../model/definition.ts";
import { type Um, wholeMm } from "../model/measure.ts";
import { plateTitle } from "../model/plate-name.ts";
import { piecesWithin } from "../model/rack-pieces.ts";
import type { CaseView } from "../model/sheet.ts";
import type { Case, Site } from "../model/site.ts";
import type { Composing } from "./composing.ts";
import { slotFacts } from "./slot-facts.ts";
import { listed, spoken } from "./spoken.ts";

type Line = CaseView["pull"][number];
/** Where a part lies, and how many of it are there; undefined where nobody looked. */
type Place = {
  readonly place: string;
  readonly status: Line["status"];
  readonly stock?: number;
};
type Range = readonly [Um, Um];
/** A part of the plan; of a plate its holes, of a screw the lengths that are planned. */
type Part = {
  readonly id: string;
  readonly holes?: number;
  readonly ranges?: readonly Range[];
};

/** The place of a part that no tray of the site holds. */
export const inNoTray = "in no tray of this site";

function placesOf(
  { catalogue }: Composing,
  site: Site,
  { id, holes, ranges = [] }: Part,
): readonly Place[] {
  return site.trays.flatMap((instance): readonly Place[] => {
    const tray = known(catalogue.trays, instance.tray);
    const slot = tray.slots.find(
      (one) =>
        slotFacts(catalogue, one).id === id &&
        (holes === undefined || one.holds !== "plate" || one.holes === holes),
    );
    if (slot === undefined) return [];
    const place = `${tray.name}, ${slot.slot}`;
    if (instance.absent.includes(id)) return [{ place, status: "missing", stock: 0 }];
    if (instance.not_checked.includes(id)) return [{ place, status: "not checked" }];
    const empty = instance.empty_lengths.flatMap(({ screw, length }) =>
      screw === id ? [length] : [],
    );
    const stock =
      slot.holds === "rack"
        ? piecesWithin(known(catalogue.screws, id), slot, ranges, empty)
        : slot.quantity;
    return [{ place, status: "in tray", stock }];
  });
}

function lineOf(what: string, pieces: number, places: readonly Place[]): Line {
  const best =
    places.find(({ status }) => status === "in tray") ??
    places.find(({ status }) => status === "not checked") ??
    places[0];
  const stock = best === undefined ? 0 : best.stock;
  return {
    what,
    pieces: stock === undefined ? String(pieces) : `${pieces} of ${stock}`,
    place: best?.place ?? inNoTray,
    status: best?.status ?? "missing",
  };
}

/** A screw's line: a piece for each hole that the plan fills with it, of those that lie in the lengths planned for them. */
function screwLine(composing: Composing, site: Site, plan: Case["plan"], screw: string): Line {
  const holes = plan.filter((planned) => planned.screw === screw);
  const spans = new Map(
    holes.flatMap(({ lengths }) =>
      lengths ? [[`${wholeMm(lengths[0])}–${wholeMm(lengths[1])}`, lengths] as const] : [],
    ),
  );
  const { called } = known(composing.catalogue.screws, screw);
  const places = placesOf(composing, site, { id: screw, ranges: [...spans.values()] });
  return lineOf(
    [called, listed([...spans.keys()])].filter(Boolean).join(", "),
    holes.length,
    places,
  );
}

/** What a case needs with its pieces, its place and its state in the trays as they stand at the site: the plate, a screw for each hole, and one of each instrument, since one hole is worked at a time; what lies there beyond that is spare. */
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
  const plate = { id: facts.plate, holes: facts.holes };
  return [
    lineOf(
      plateTitle(known(catalogue.plates, facts.plate), facts.holes),
      1,
      placesOf(composing, site, plate),
    ),
    ...screws.map((id) => screwLine(composing, site, facts.plan, id)),
    ...instruments.map((id) => {
      const name = spoken(known(catalogue.instruments, id));
      const what = needed.has(id) ? name : `${name}, if asked`;
      return lineOf(what, 1, placesOf(composing, site, { id }));
    }),
  ];
}

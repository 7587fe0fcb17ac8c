import { known } from "../model/catalogue.ts";
import type { Mishap } from "../model/mishap.ts";
import type { MishapView } from "../model/sheet.ts";
import type { Composing } from "./composing.ts";
import { fingerprinted } from "./fingerprint.ts";
import { frames } from "./frame.ts";
import { grouped } from "./grouped.ts";
import { spoken } from "./spoken.ts";
import { unparted } from "./unparted.ts";

function wanted(
  { catalogue, derived }: Composing,
  system: string,
  fetch: NonNullable<Mishap["fetch"]>,
): ReadonlySet<string> {
  if (fetch === "removal-kit") {
    const drives = new Set(
      [...catalogue.screws.values()]
        .filter((screw) => screw.system === system)
        .map(({ drive }) => drive),
    );
    const kits = [...catalogue.instruments.values()].filter(
      (one) => one.kind === "removal-kit" && one.drives.some((drive) => drives.has(drive)),
    );
    return new Set(kits.map(({ id }) => id));
  }
  const chains = derived.chains.filter((chain) => chain.system === system);
  return new Set(
    chains.flatMap(({ links }) =>
      links.flatMap(({ role, instrument }) =>
        role === "pilot-drill" || role === "gliding-drill" ? (instrument ?? []) : [],
      ),
    ),
  );
}

/** Where what is fetched lies: "Small instrument tray: drill 2.5 in A1 (2), …". */
function fetched(composing: Composing, system: string, { fetch }: Mishap): string {
  if (fetch === undefined) return "";
  const { trays, instruments } = composing.catalogue;
  const ids = wanted(composing, system, fetch);
  const lying = [...trays.values()].flatMap(({ name, slots }) =>
    slots.flatMap((slot) =>
      slot.holds === "instrument" && ids.has(slot.instrument)
        ? [
            {
              name,
              words: unparted(
                `${spoken(known(instruments, slot.instrument))} in ${slot.slot} (${slot.quantity})`,
              ),
            },
          ]
        : [],
    ),
  );
  return [...grouped(lying, ({ name }) => name).entries()]
    .map(([name, parts]) => `${name}: ${parts.map(({ words }) => words).join(", ")}.`)
    .join(" ");
}

/** The sheet of one system for what does not go to plan; none where the library names no mishap. */
export function mishapSheets(composing: Composing, system: string): readonly MishapView[] {
  const { catalogue } = composing;
  const { name, file, documents } = known(catalogue.systems, system);
  const mishaps = [...catalogue.mishaps.values()].sort(
    (a, b) => a.order - b.order || (a.id < b.id ? -1 : 1),
  );
  if (mishaps.length === 0) return [];
  const rows = mishaps.map((mishap) => ({
    name: mishap.name,
    acts: mishap.acts,
    decides: mishap.decides === undefined ? "" : "Surgeon decides",
    fetched: fetched(composing, system, mishap),
  }));
  const cautions = [...catalogue.cautions.values()].filter(
    ({ against }) => against === "lost-piece",
  );
  const facts = {
    id: `${system}-mishaps`,
    system,
    title: `${name}: when it does not go to plan`,
    lead: "Stop first. Say aloud what is seen. Nothing here stands in for the surgeon's decision.",
    cautions: cautions.map(({ id }) => id),
    origin: file,
    kind: "mishaps" as const,
    shows: mishaps.map((mishap) => `mishap/${mishap.id}`),
    trueSize: false,
    documents: [...new Set([...documents, ...mishaps.map(({ source }) => source.document)])],
  };
  return frames(composing, facts).map((frame) =>
    fingerprinted<MishapView>({ ...frame, kind: "mishaps", rows }),
  );
}

import { known } from "../model/catalogue.ts";
import type { PosterView } from "../model/sheet.ts";
import { type ChainGroup, chainGroups, isLag } from "./chain-groups.ts";
import type { Composing } from "./composing.ts";
import { frames } from "./frame.ts";
import { grouped } from "./grouped.ts";
import { everyScrew } from "./hand-words.ts";
import { holeSymbols } from "./hole-symbols.ts";
import { type PairingColumn, pairingCell, plateColumns } from "./pairing-cells.ts";

type Row = PosterView["families"][number]["rows"][number];

function rowOf(
  composing: Composing,
  id: string,
  group: ChainGroup,
  columns: readonly PairingColumn[],
): Row {
  const [first] = group.chains;
  const zones = [...new Set(group.chains.map(({ zone }) => zone))];
  const { figures, words } = holeSymbols(composing, `${id}-hole`, zones);
  return {
    chains: group.chains.map((chain) => chain.id),
    called: known(composing.catalogue.screws, group.screw).called,
    phrase: group.phrase,
    holes: figures,
    holeWords: words,
    cells: columns.map((column) => {
      const { noun, number, note } = pairingCell(composing, id, first, column);
      return { noun, number, note: note.replace(/ end$/, "") };
    }),
  };
}

/** The wall poster of one system: each screw with what belongs to it, by family, read across the room. */
export function posterSheets(composing: Composing, system: string): readonly PosterView[] {
  const { catalogue, derived } = composing;
  const chains = derived.chains.filter((chain) => chain.system === system && !isLag(chain));
  if (chains.length === 0) return [];
  const { name, file } = known(catalogue.systems, system);
  const id = `${system}-poster`;
  const isLocking = ({ screw }: ChainGroup): boolean =>
    known(catalogue.screws, screw).class === "locking";
  const groups = [...chainGroups(composing, chains)].sort(
    (a, b) => Number(isLocking(b)) - Number(isLocking(a)),
  );
  const families = grouped(groups, (group) =>
    isLocking(group)
      ? "Locking: sleeve first, limiter last"
      : "Plain-head: guide first, by hand last",
  );
  const same = everyScrew(composing, chains, ["gauge"]);
  /** A gauge that serves every screw is said once, above the rows. */
  const columns = plateColumns.filter(({ roles }) => same === "" || !roles.includes("gauge"));
  const about = {
    id,
    system,
    title: `${name}: what belongs to which screw`,
    lead: "Check every number.",
    cautions: [],
    origin: file,
    kind: "poster" as const,
    shows: chains.map((chain) => `chain/${chain.id}`),
    trueSize: false,
  };
  return frames(composing, about).map((frame) => ({
    ...frame,
    kind: "poster",
    everyScrew: same,
    families: [...families.entries()].map(([family, rows], part) => ({
      name: family,
      rows: rows.map((group, index) =>
        rowOf(composing, `${id}-f${part + 1}-r${index + 1}`, group, columns),
      ),
    })),
  }));
}

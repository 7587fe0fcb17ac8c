import { known } from "../model/catalogue.ts";
import type { Chain } from "../model/chain.ts";
import type { PairingView, SheetFrame } from "../model/sheet.ts";
import { type ChainGroup, chainGroups, isLag } from "./chain-groups.ts";
import type { Composing } from "./composing.ts";
import { fingerprinted } from "./fingerprint.ts";
import { landscape } from "./formats.ts";
import { frames } from "./frame.ts";
import { holeSymbols } from "./hole-symbols.ts";
import { lookAlikeLines, pairsWithin } from "./look-alikes.ts";
import { lagColumns, type PairingColumn, pairingCell, plateColumns } from "./pairing-cells.ts";
import { drillTrapLines, inTurn, screwTrapLines } from "./traps.ts";
import { typeFloors } from "./type-sizes.ts";
import { warningBox } from "./warning-box.ts";

/** Millimetres: a row with pictures, one whose called-out words take two lines, one where they take three, all that stands above and below the rows,
 * a printed line of cautions and one of a box. */
const rowHeight = 16.4;
const wrappedRow = 17.4;
const tallRow = 21;
const around = 61;
const cautionLine = 3.4;
const boxLine = 6.2;
const narrow = 290;

function rowOf(
  composing: Composing,
  id: string,
  group: ChainGroup,
  columns: readonly PairingColumn[],
): PairingView["rows"][number] {
  const [first] = group.chains;
  const zones = [...new Set(group.chains.map(({ zone }) => zone))];
  const { figures, words } = holeSymbols(composing, `${id}-hole`, zones);
  const [hole, ...otherHoles] = figures;
  return {
    chains: group.chains.map((chain) => chain.id),
    called: known(composing.catalogue.screws, group.screw).called,
    phrase: group.phrase,
    hole,
    ...(otherHoles.length > 0 ? { otherHoles } : {}),
    holeWords: words,
    cells: columns.map((column) => pairingCell(composing, id, first, column)),
  };
}

function boxes(
  composing: Composing,
  chains: readonly Chain[],
  frame: SheetFrame,
  rows: PairingView["rows"],
): Pick<PairingView, "traps" | "lookAlikes"> {
  const { derived } = composing;
  const zones = new Set(chains.map(({ zone }) => zone));
  const handled = new Set(
    chains.flatMap(({ screw, links }) => [
      screw,
      ...links.flatMap(({ instrument }) => instrument ?? []),
    ]),
  );
  const traps = inTurn(
    screwTrapLines(
      composing,
      derived.screwTraps.filter((trap) => zones.has(trap.zone)),
    ),
    drillTrapLines(
      composing,
      derived.drillTraps.filter((trap) => handled.has(trap.through)),
    ),
  );
  const { width, height } = frame.format;
  const lag = chains.every(isLag);
  const tall = (phrase: string): boolean => phrase !== "" && (width < narrow || lag);
  const taken = rows.reduce(
    (sum, { phrase }) => sum + (tall(phrase) ? tallRow : width < narrow ? wrappedRow : rowHeight),
    around + Math.ceil(frame.cautions.length / 2) * cautionLine,
  );
  const left = height - taken;
  const room = {
    lines: Math.max(2, Math.floor(left / boxLine)),
    width: width / 2 - 16,
    size: typeFloors("pairing").body,
  };
  return {
    traps: warningBox("Goes in, and is wrong.", traps, room),
    lookAlikes: warningBox(
      "Looks alike.",
      lookAlikeLines(
        composing,
        pairsWithin(derived.lookAlikes, (id) => handled.has(id)),
      ),
      room,
    ),
  };
}

type Part = {
  readonly slug: string;
  readonly title: string;
  readonly lead: string;
  readonly chains: readonly Chain[];
  readonly columns: readonly PairingColumn[];
};

function sheets(composing: Composing, system: string, part: Part): readonly PairingView[] {
  const { catalogue } = composing;
  if (part.chains.length === 0) return [];
  const id = `${system}-pairing-${part.slug}`;
  const { name, file } = known(catalogue.systems, system);
  const recipes = [...new Set(part.chains.map(({ recipe }) => recipe))].map((recipe) =>
    known(catalogue.recipes, recipe),
  );
  const rows = chainGroups(composing, part.chains).map((group, index) =>
    rowOf(composing, `${id}-r${index + 1}`, group, part.columns),
  );
  const facts = {
    id,
    system,
    title: `${name}: ${part.title}`,
    lead: part.lead,
    origin: file,
    formats: landscape,
    trueSize: true,
    cautions: recipes.flatMap((recipe) => recipe.required_cautions),
  };
  return frames(composing, facts).map((frame) =>
    fingerprinted<PairingView>({
      ...frame,
      kind: "pairing",
      columns: ["called out", "hole", ...part.columns.map(({ title }) => title)],
      rows,
      ...boxes(composing, part.chains, frame, rows),
    }),
  );
}

/** Pairing sheets of one system: a row per distinct chain through plate holes, and lag screws on a sheet of their own. */
export function pairingSheets(composing: Composing, system: string): readonly PairingView[] {
  const chains = composing.derived.chains.filter((chain) => chain.system === system);
  const lead =
    "Start with the screw that is called. Read across in hand-over order. Check the number on the metal.";
  return [
    {
      slug: "plates",
      title: "what to hand over for each screw",
      lead,
      chains: chains.filter((chain) => !isLag(chain)),
      columns: plateColumns,
    },
    {
      slug: "lag",
      title: "what to hand over for a lag screw",
      lead,
      chains: chains.filter(isLag),
      columns: lagColumns,
    },
  ].flatMap((part) => sheets(composing, system, part));
}

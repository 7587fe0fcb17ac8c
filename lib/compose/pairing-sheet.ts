import { known } from "../model/catalogue.ts";
import type { Chain } from "../model/chain.ts";
import type { PairingView } from "../model/sheet.ts";
import type { SheetFrame, WarningBox, WarningLine } from "../model/sheet-frame.ts";
import { enlargement, typeFloors } from "../model/type-sizes.ts";
import { type ChainGroup, chainGroups, isLag } from "./chain-groups.ts";
import type { Composing } from "./composing.ts";
import { frames } from "./frame.ts";
import { holeSymbols } from "./hole-symbols.ts";
import { confusions } from "./look-alikes.ts";
import { notesHeight } from "./notes-height.ts";
import { lagColumns, type PairingColumn, pairingCell, plateColumns } from "./pairing-cells.ts";
import { type SectionsWanted, sectionViews } from "./section-views.ts";
import { cutsWanted } from "./step-cuts.ts";
import { trapLines } from "./traps.ts";
import { warningBox } from "./warning-box.ts";

/** Millimetres: a row with pictures, one whose called-out words take two lines, one where they take three, all that stands above and below the rows,
 * as much of that as grows with the type, and a line of a box. */
const rowHeight = 16.4;
const wrappedRow = 17.4;
const tallRow = 21;
const around = 60;
const headLines = 22;
const boxLine = 6.2;
const narrow = 290;
/** Millimetres: a strip of cut views with its words and the gap between two, and the least that the boxes keep. */
const stripHeight = 60;
const stripWords = 5;
const stripLetter = 4;
const stripGap = 6;
const mostCuts = 3;
const leastBoxes = 36;

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

/** Millimetres of height that the rows leave on the page. */
function heightLeft(
  composing: Composing,
  frame: SheetFrame,
  rows: PairingView["rows"],
  lag: boolean,
): number {
  const { width, height } = frame.format;
  const wide = enlargement("pairing", frame.format);
  const tall = (phrase: string): boolean => phrase !== "" && (width < narrow || lag);
  const taken = rows.reduce(
    (sum, { phrase }) =>
      sum + wide * (tall(phrase) ? tallRow : width < narrow ? wrappedRow : rowHeight),
    around + (wide - 1) * headLines + notesHeight(composing, "pairing", frame),
  );
  return height - taken;
}

/** The cut views of a sheet: the two holes of the last lag screw and that screw seated in each kind of hole, or a locking beside a plain-head screw. */
function cutsOf(chains: readonly Chain[], composing: Composing): SectionsWanted {
  const { catalogue } = composing;
  const lag = chains.filter(isLag);
  if (lag.length > 0)
    return cutsWanted(
      composing,
      lag.filter(({ screw }) => screw === lag.at(-1)?.screw),
    ).slice(0, mostCuts);
  const kind = ({ zone }: Chain): boolean => known(catalogue.zones, zone).kind === "threaded";
  const pair = [chains.findLast(kind), chains.find((chain) => !kind(chain))];
  return pair.flatMap((chain) => (chain === undefined ? [] : [[chain, "seated"] as const]));
}

/** Cut views beneath the rows where enough paper is left beside the boxes, and how high they stand. */
function cuts(
  composing: Composing,
  frame: SheetFrame,
  chains: readonly Chain[],
  left: number,
): { readonly sections?: SheetFrame["sections"]; readonly taken: number } {
  const wide = enlargement("pairing", frame.format);
  const high = stripHeight * wide;
  if (left < high + leastBoxes * wide) return { taken: 0 };
  const wanted = cutsOf(chains, composing);
  const columns = Math.max(2, wanted.length);
  const width = (frame.format.width - 2 * frame.format.margin - (columns - 1) * stripGap) / columns;
  const size = {
    width,
    height: high - stripWords,
    letter: stripLetter * wide,
  };
  const sections = sectionViews(composing, frame.id, wanted, size);
  return sections.length > 0
    ? { sections, taken: high + (frame.format.width < narrow ? 5 : 0) }
    : { taken: 0 };
}

/** How the width is shared between the two boxes, and the traps' part of it. */
const shares = [
  ["evenly", 1 / 2],
  ["three-to-two", 3 / 5],
  ["two-to-one", 2 / 3],
] as const;

/** Millimetres between the two boxes, and what the edges of one take of its width. */
const boxGap = 4;
const boxEdges = 6;

/** Traps and look-alikes beside each other, the width shared so that the fewest lines are left out. */
function boxes(
  composing: Composing,
  chains: readonly Chain[],
  { format }: SheetFrame,
  left: number,
): Pick<PairingView, "traps" | "lookAlikes" | "share"> {
  const zones = chains.map(({ zone }) => zone);
  const handled = new Set(
    chains.flatMap(({ screw, links }) => [
      screw,
      ...links.flatMap(({ instrument }) => instrument ?? []),
    ]),
  );
  const wrong = trapLines(composing, zones, chains);
  const alike = confusions(composing, (id) => handled.has(id));
  const whole = format.width - 2 * format.margin - boxGap;
  const room = {
    lines: Math.max(2, Math.floor(left / (boxLine * enlargement("pairing", format)))),
    size: typeFloors("pairing", format).body,
  };
  const box = (title: string, lines: readonly WarningLine[], part: number): WarningBox =>
    warningBox(composing.pictures, title, lines, { ...room, width: whole * part - boxEdges });
  const ways = shares.map(([share, part]) => ({
    share,
    traps: box("Goes in, and is wrong.", wrong, part),
    lookAlikes: box("Looks alike.", alike, 1 - part),
  }));
  return ways.reduce((best, way) => (told(way) > told(best) ? way : best));
}

/** How many warnings two boxes hold. */
const told = ({ traps, lookAlikes }: Pick<PairingView, "traps" | "lookAlikes">): number =>
  traps.lines.length + lookAlikes.lines.length;

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
    kind: "pairing" as const,
    shows: part.chains.map((chain) => `chain/${chain.id}`),
    trueSize: true,
    cautions: recipes.flatMap((recipe) => recipe.required_cautions),
  };
  return frames(composing, facts).map((frame) => {
    const left = heightLeft(composing, frame, rows, part.chains.every(isLag));
    const { taken, ...cut } = cuts(composing, frame, part.chains, left);
    return {
      ...frame,
      ...cut,
      kind: "pairing",
      columns: ["called out", "hole", ...part.columns.map(({ title }) => title)],
      rows,
      ...boxes(composing, part.chains, frame, left - taken),
    } satisfies PairingView;
  });
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

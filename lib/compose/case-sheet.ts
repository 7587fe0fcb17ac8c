import { known } from "../model/catalogue.ts";
import type { Chain } from "../model/chain.ts";
import { exchangeables, isTakenUp } from "../model/exchange.ts";
import { labelSpan } from "../model/label-span.ts";
import type { LaidPlate } from "../model/laid-plate.ts";
import { wholeMm } from "../model/measure.ts";
import { plateTitle } from "../model/plate-name.ts";
import type { CaseView } from "../model/sheet.ts";
import type { SheetFrame, WarningBox, WarningLine } from "../model/sheet-frame.ts";
import { type Case, isOver } from "../model/site.ts";
import { typeSizes } from "../model/type-sizes.ts";
import type { Composing } from "./composing.ts";
import { frames } from "./frame.ts";
import { grouped } from "./grouped.ts";
import { type Hand, handOf } from "./hand-words.ts";
import { partWords } from "./hole-symbols.ts";
import { notesHeight } from "./notes-height.ts";
import { sideWords } from "./plate-facts.ts";
import { linesOf } from "./printed-lines.ts";
import { inNoTray, pullList } from "./pull-list.ts";
import { listed } from "./spoken.ts";
import { unparted } from "./unparted.ts";

function missingBox(pull: CaseView["pull"], checked: string): WarningBox {
  const of = (status: CaseView["pull"][number]["status"], word: string): readonly WarningLine[] =>
    pull
      .filter((line) => line.status === status && line.place !== inNoTray)
      .map(({ what, place }) => ({ subject: `${word}: ${what}`, words: `(${place}).` }));
  const nowhere = pull.filter(({ place }) => place === inNoTray).map(({ what }) => what);
  const lines = [
    ...of("missing", "Missing"),
    ...(nowhere.length > 0
      ? [{ subject: `Missing: ${nowhere.join(", ")}`, words: `(${inNoTray}).` }]
      : []),
    ...of("not checked", "Not checked"),
  ];
  const none = { subject: "Nothing missing", words: `when last checked, ${checked}.` };
  return { title: "Missing for this case", lines: lines.length > 0 ? lines : [none] };
}

type Planned = Case["plan"][number];

function lengthWords({ lengths }: Planned): string {
  return lengths ? `${wholeMm(lengths[0])}–${wholeMm(lengths[1])}` : "surgeon decides";
}

/** The expected lengths of a row, one line each; by hole where they differ. */
function rowLengths(run: readonly Planned[]): string {
  const ranges = [...grouped(run, lengthWords).entries()];
  return ranges
    .map(([range, same]) =>
      ranges.length > 1 ? `${labelSpan(same.map(({ hole }) => hole))}: ${range}` : range,
    )
    .join("\n");
}

/** Which instruments of a row do not lie in the hand from the row before it ("Change drill and driver: "); nothing where there is no row before, or all stay. */
function changeWords(before: Chain | undefined, now: Chain | undefined): string {
  if (before === undefined || now === undefined) return "";
  const named = exchangeables.filter((what) => isTakenUp(before, now, what));
  return named.length > 0 ? `Change ${listed(named)}: ` : "";
}

/** The plan in its order; neighbours of one kind of hole filled in the same way share a row. */
function planRows(
  composing: Composing,
  plate: LaidPlate,
  plan: readonly Planned[],
  chainOf: (planned: Planned) => Chain | undefined,
  hand: Hand,
): CaseView["rows"] {
  const { catalogue } = composing;
  const openingOf = ({ hole }: Planned) => plate.holes.find(({ label }) => label === hole)?.kind;
  const filling = (planned: Planned): string =>
    [openingOf(planned), planned.zone, planned.screw, planned.recipe].join(" ");
  const runs: [Planned, ...Planned[]][] = [];
  for (const planned of plan) {
    const run = runs.at(-1);
    if (run && filling(run[0]) === filling(planned)) run.push(planned);
    else runs.push([planned]);
  }
  return runs.map((run, index) => {
    const [first] = run;
    const chain = chainOf(first);
    const before = runs[index - 1];
    const changes = changeWords(before && chainOf(before[0]), chain);
    const { kind } = known(catalogue.zones, first.zone);
    const opening = openingOf(first) ?? kind;
    return {
      order: run.length > 1 ? `${first.order}–${run.at(-1)?.order}` : String(first.order),
      hole: `${labelSpan(run.map(({ hole }) => hole))} ${partWords(kind, opening)}`,
      called: known(catalogue.screws, first.screw).called,
      technique: known(catalogue.recipes, first.recipe).phrase ?? "",
      hand: chain === undefined ? "no chain: ask" : `${changes}${unparted(hand.words(chain))}`,
      lengths: rowLengths(run),
    };
  });
}

/** Millimetres: what stands beside the map, above and below map and plan, between the map and its limits; the words of a row, and its rules. */
const beside = 103;
const aboveAndBelow = 64;
const mapHeights = { least: 38, most: 42 };
const besideWords = 60;
const rowRules = 1.4;

/** The map as large as the plan beneath it allows. */
function mapSize(
  composing: Composing,
  frame: SheetFrame,
  rows: CaseView["rows"],
): { readonly width: number; readonly height: number } {
  const { width: page, height, margin } = frame.format;
  const width = page - 2 * margin - beside;
  const { body } = typeSizes("case", frame.format);
  const column = { width: width - besideWords, size: body };
  const plan = rows.reduce((sum, { called, technique, hand }) => {
    const lines =
      linesOf(composing.pictures, [{ text: called, weight: 700 }, { text: technique }], column) +
      linesOf(composing.pictures, [{ text: hand }], column);
    return sum + lines * body * 1.06 + rowRules;
  }, 0);
  const left = height - 2 * margin - aboveAndBelow - plan - notesHeight(composing, "case", frame);
  return { width, height: Math.min(mapHeights.most, Math.max(mapHeights.least, left)) };
}

/** The sheet of one planned case: plate, hole plan, what to hand over in order, and where each part lies at the site. */
export function caseSheets(composing: Composing, id: string): readonly CaseView[] {
  const { catalogue, derived, pictures } = composing;
  const facts = known(catalogue.cases, id);
  const plate = derived.plates.find(
    (laid) => laid.plate === facts.plate && laid.holesInRow === facts.holes,
  );
  if (plate === undefined) return [];
  const site = known(catalogue.sites, facts.site);
  const plan = [...facts.plan].sort((a, b) => a.order - b.order || (a.hole < b.hole ? -1 : 1));
  const chainOf = (planned: Planned): Chain | undefined =>
    derived.chains.find(
      ({ zone, screw, recipe }) =>
        zone === planned.zone && screw === planned.screw && recipe === planned.recipe,
    );
  const chains = plan.flatMap((planned) => chainOf(planned) ?? []);
  const hand = handOf(composing, chains);
  const rows = planRows(composing, plate, plan, chainOf, hand);
  const pull = pullList(composing, facts, chains);
  const checked = site.trays.map(({ checked: { date } }) => date).sort()[0] ?? "never";
  const recipes = [...new Set(plan.map(({ recipe }) => recipe))];
  const expired = isOver(facts, composing.today);
  const about = {
    id: id.startsWith("case-") ? id : `case-${id}`,
    system: plate.system,
    title: `${facts.code}: ${facts.name}`,
    lead: expired
      ? `Expired on ${facts.expires}: do not use.`
      : (facts.note ?? "The plan as told. The surgeon decides plate, holes, order and lengths."),
    cautions: [
      ...(facts.procedure ? known(catalogue.procedures, facts.procedure).required_cautions : []),
      ...recipes.flatMap((recipe) => known(catalogue.recipes, recipe).required_cautions),
    ],
    origin: facts.file,
    kind: "case" as const,
    shows: [`case/${id}`, `plate/${plate.id}`, ...chains.map((chain) => `chain/${chain.id}`)],
    trueSize: false,
  };
  return frames(composing, about).map((frame) => {
    const size = mapSize(composing, frame, rows);
    return {
      ...frame,
      kind: "case",
      code: facts.code,
      sideWords: sideWords(facts.side),
      plateWords: plateTitle(plate, plate.holesInRow),
      siteWords: `${site.name}; trays checked ${checked}`,
      expires: expired
        ? `Expired on ${facts.expires}: do not use. Destroy this sheet.`
        : `Expires ${facts.expires}. Destroy after the case.`,
      map: pictures.plateMap(`${about.id}-map`, plate, size, {
        marked: plan.map(({ hole }) => hole),
      }),
      rows,
      everyScrew: hand.everyScrew,
      pull,
      missing: missingBox(pull, checked),
    } satisfies CaseView;
  });
}

import type { Figure } from "../model/figure.ts";
import { formats } from "../model/format.ts";
import type { CaseView, PairingView, PlateMapView, StepView } from "../model/sheet.ts";
import type { CautionView, SheetFrame } from "../model/sheet-frame.ts";

const figure = (svg: string): Figure => ({
  id: "sample",
  svg,
  title: "sample",
  description: "sample",
  width: 100,
  height: 40,
});

const frame: SheetFrame = {
  id: "sample",
  system: "pebblefin",
  systemName: "Pebblefin",
  format: formats["a4-portrait"],
  formats: ["a4-portrait"],
  title: "Screw 3.5 locking",
  lead: "Goes in: threaded part 3.5.",
  generation: "Generation 2. Two rings on the tray handle.",
  banner: "",
  logo: "Logo",
  ask: "Ask: instrument educator, extension 1200",
  defer: "The surgeon decides. Instructions for use and local protocol prevail.",
  identity: {
    card: "PF-SAMPLE",
    issue: "issue C",
    date: "2026-10-01",
    trayRevision: "tray revision 4",
    reviewBy: "review by 2027-10-01",
    page: "page 1 of 1",
    distance: "A4, for 80 cm",
    language: "en",
    fingerprint: "3f9a71c2",
    sources: "Sources: instructions for use, issue C",
  },
  cautions: [],
  signed: [],
  shows: [],
  origin: "sample.yaml",
};

/** So many cautions, each of its own. */
export const sampleCautions = (amount: number): readonly CautionView[] =>
  Array.from({ length: amount }, (_, index) => ({
    id: `caution-${index + 1}`,
    signal: "CAUTION",
    text: "Make the last turns by hand.",
  }));

/** A step of a sample step card. */
export const sampleStep: StepView["steps"][number] = {
  number: "1",
  verb: "Measure",
  say: "Measure the depth.",
  inHand: "gauge 10–70",
  handedWith: "",
  frame: figure("<svg/>"),
  decides: "",
  skip: "",
  aside: "",
  cautions: [],
  tally: [],
};

/** A step card with one step, changed where an example needs it. */
export const sampleSteps = (change: Partial<StepView> = {}): StepView => ({
  ...frame,
  kind: "steps",
  subject: "Locking screw",
  steps: [sampleStep],
  ...change,
});

/** A row of a sample pairing sheet. */
export const samplePairingRow: PairingView["rows"][number] = {
  chains: [],
  called: "Screw 3.5 locking",
  phrase: "",
  hole: figure("<svg/>"),
  holeWords: "threaded part",
  cells: [{ role: "pilot-drill", noun: "drill", number: "2.7", note: "3 rings" }],
};

/** A pairing sheet of so many rows. */
export const samplePairing = (rows: number, change: Partial<PairingView> = {}): PairingView => ({
  ...frame,
  kind: "pairing",
  columns: ["drill"],
  rows: Array.from({ length: rows }, () => samplePairingRow),
  traps: { title: "", lines: [] },
  lookAlikes: { title: "", lines: [] },
  share: "evenly",
  ...change,
});

/** The marks of a plate map that rules read: plate, words and, for each hole, its place and its label. */
export const sampleMap = (
  plate: string,
  words: Readonly<Record<string, string>>,
  holes: readonly string[],
  labels: readonly string[],
): Figure =>
  figure(
    `<svg><g data-plate="${plate}">${Object.entries(words)
      .map(([word, text]) => `<text data-word="${word}">${text}</text>`)
      .join("")}` +
      `${holes.map((hole) => `<g data-hole="${hole}"></g>`).join("")}${labels.map((label) => `<text data-label="${label}">${label}</text>`).join("")}</g></svg>`,
  );

const words = { side: "LEFT", proximal: "towards the body", face: "this face up" };

/** A plate map, changed where an example needs it. */
export const samplePlateMap = (change: Partial<PlateMapView> = {}): PlateMapView => ({
  ...frame,
  kind: "plate-map",
  title: "Lower fibula plate, LEFT",
  sideWords: "LEFT",
  map: sampleMap("lower-fibula-left-5", words, [], []),
  orientation: [
    "Towards the body: the narrow end, at the right of the picture.",
    "The etched face lies up.",
  ],
  legend: [],
  bands: [],
  traps: { title: "", lines: [] },
  table: [],
  ...change,
});

/** A row of a case sheet for one hole. */
export const sampleRow = (hole: string): CaseView["rows"][number] => ({
  order: "1",
  hole,
  called: "Screw 3.5 locking",
  technique: "locking",
  hand: "sleeve 3.5",
  lengths: "surgeon decides",
});

/** A case sheet, changed where an example needs it. */
export const sampleCase = (change: Partial<CaseView> = {}): CaseView => ({
  ...frame,
  kind: "case",
  code: "CASE-A",
  sideWords: "LEFT",
  plateWords: "Lower fibula plate, LEFT, 5 holes",
  siteWords: "Brackenhollow General",
  expires: "Expires 2026-12-01. Destroy after the case.",
  map: sampleMap("lower-fibula-left-5", words, [], []),
  rows: [],
  pull: [],
  missing: { title: "", lines: [] },
  ...change,
});

import type { Figure } from "../../lib/model/figure.ts";
import { formats } from "../../lib/model/format.ts";
import type {
  CaseView,
  LabelsView,
  LengthView,
  MishapView,
  PairingCell,
  PairingView,
  PlateMapView,
  PocketView,
  PosterView,
  SheetView,
  StepView,
  TrayView,
} from "../../lib/model/sheet.ts";
import type { SheetFrame } from "../../lib/model/sheet-frame.ts";

/** A plain rectangle that stands for a drawing, millimetres. */
function rectangle(id: string, width: number, height: number): Figure {
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" id="${id}" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}" role="img" aria-label="${id}"><rect x="0.2" y="0.2" width="${width - 0.4}" height="${height - 0.4}" fill="#fff" stroke="#000" stroke-width="0.35"/></svg>`;
  return { id, svg, title: id, description: id, width, height };
}

const caution = {
  id: "hand-finish",
  signal: "CAUTION",
  text: "Make the last turns by hand.",
} as const;

function frame(id: string, format: SheetFrame["format"]): SheetFrame {
  return {
    id,
    system: "minnow",
    shows: ["chain/plain--screw--neutral"],
    systemName: "Minnow",
    format,
    formats: [format.id],
    title: `Minnow: ${id}`,
    lead: "Read the number on the metal.",
    generation: "Generation 2. Two rings on the tray handle.",
    banner: "INVENTED DATA. NOT FOR CLINICAL USE.",
    logo: "Logo",
    ask: "Ask: instrument educator, extension 1200",
    defer: "The surgeon decides. Instructions for use and local protocol come first.",
    identity: {
      card: `MN-${id}`,
      issue: "issue C",
      date: "2026-10-01",
      trayRevision: "tray revision 4",
      reviewBy: "review by 2027-10-01",
      page: "page 1 of 1",
      distance: "A4, for 80 cm",
      language: "en",
      fingerprint: "3f9a71c2",
      sources: "Sources: Minnow instructions for use, issue C, 2026-09-01",
    },
    cautions: [caution],
    signed: [
      { id: "pilot-signed", words: "Expected 2.5, got 2.4. It suits. Design lead, 2026-09-10." },
    ],
    practice: { words: "Answers: another card.", answers: "another-card" },
    sections: [{ figure: rectangle(`${id}-cut`, 40, 6), words: "Screw seated in its hole." }],
    scaleBar: rectangle(`${id}-bar`, 50, 4),
    cardCode: rectangle(`${id}-code`, 10, 10),
    origin: "content/systems/minnow/system.yaml",
  };
}

const a4 = formats["a4-landscape"];
const portrait = formats["a4-portrait"];
const a5 = formats["a5-landscape"];

const cell = (
  id: string,
  role: string,
  noun: string,
  number: string,
  note: string,
): PairingCell => ({
  role,
  noun,
  number,
  note,
  figure: rectangle(id, 24, 4.5),
});
const none = (role: string, noun: string, note: string): PairingCell => ({
  role,
  noun,
  number: "",
  note,
});
type Line = readonly [subject: string, words: string, other?: readonly [string, string]];
const box = (title: string, ...lines: readonly Line[]) => ({
  title,
  lines: lines.map(([subject, words, other]) => ({
    subject,
    words,
    ...(other ? { other: { subject: other[0], words: other[1] } } : {}),
  })),
});
const rings = {
  ...box("Looks alike.", ["Drill 2.5:", "2 rings;", ["drill 2.7:", "3 rings."]]),
  more: "3 more on the site.",
};

function pairing(): PairingView {
  const row = (number: number, called: string, phrase: string): PairingView["rows"][number] => ({
    chains: [`round--${number}--plain`],
    called,
    phrase,
    hole: rectangle(`h${number}`, 7, 7),
    otherHoles: [rectangle(`g${number}`, 9, 7)],
    holeWords: "plain round or oblong",
    cells: [
      cell(`s${number}`, "guide", "guide", "2.5", "offset end"),
      cell(`d${number}`, "pilot-drill", "drill", "2.5", "2 rings"),
      cell(`m${number}`, "gauge", "gauge", "10–70", ""),
      none("tap", "no tap", "in this tray"),
      cell(`v${number}`, "driver", "driver", "20", ""),
      none("limiter", "by hand", "on handle S"),
    ],
  });
  return {
    ...frame("pairing-plates", a4),
    kind: "pairing",
    columns: [
      "called out",
      "hole",
      "guide or sleeve",
      "drill",
      "measure",
      "tap",
      "driver",
      "tighten",
    ],
    rows: [
      row(1, "Screw 3.5 locking", ""),
      row(2, "Screw 3.5 cortical", "offset, for compression"),
      row(3, "Screw 4.0 cancellous", ""),
    ],
    traps: box(
      "Goes in, and is wrong.",
      ["Screw 3.5 cortical", "in threaded part 3.5: head lodges."],
      ["Drill 2.5", "passes sleeve 3.5."],
    ),
    lookAlikes: rings,
    share: "three-to-two",
  };
}

function lengths(): LengthView {
  const entry = (reads: string, next: string, words: string) => ({
    reads,
    next,
    dead: words !== "",
    words,
  });
  return {
    ...frame("lengths", portrait),
    kind: "lengths",
    columns: [
      {
        screw: "locking-35",
        called: "Screw 3.5 locking",
        policy: "Reading, up to the next length, less than 2 over.",
        entries: [
          entry("15–16", "16", ""),
          entry("17–18", "18", ""),
          entry("51–53", "", "50: 1 to 3 short; 55: 4 to 2 long"),
        ],
      },
      {
        screw: "cortical-45",
        called: "Screw 4.5 cortical",
        policy: "See instructions for use.",
        entries: [],
      },
    ],
    deadNote: "Hatched: no screw made for this reading. Ask the surgeon.",
  };
}

function plateMap(): PlateMapView {
  return {
    ...frame("plate-fibula", a5),
    kind: "plate-map",
    everyScrew: "Gauge 10–70 and handle S for every screw here.",
    sideWords: "LEFT",
    map: rectangle("map", 190, 40),
    orientation: [
      "Towards the body: the narrow end, at the left of the picture.",
      "The etched face lies up.",
    ],
    legend: [
      { symbol: rectangle("l1", 5, 5), words: "threaded" },
      { symbol: rectangle("l2", 8, 5), words: "combined" },
    ],
    bands: [
      {
        region: "Head holes",
        holes: "H1–H5",
        pairings: [
          {
            zone: "threaded round",
            called: "Screw 2.7 locking",
            hand: "sleeve 2.7, drill 2.0, driver 10, limiter 0.9 N·m",
          },
        ],
      },
      {
        region: "Shaft holes",
        holes: "S1–S5",
        pairings: [
          {
            zone: "threaded part",
            called: "Screw 3.5 locking",
            hand: "sleeve 3.5, drill 2.7, driver 20, limiter 1.6 N·m",
          },
        ],
      },
    ],
    traps: box("Goes in, and is wrong.", ["Screw 3.5 locking", "in oblong 3.5: head lodges."]),
    side: rectangle("from-the-side", 60, 12),
    table: [
      { label: "H1", kind: "threaded", takes: "Screw 2.7 locking" },
      {
        label: "S1",
        kind: "combined, threaded part proximal",
        takes: "Screw 3.5 locking or Screw 3.5 cortical",
      },
    ],
  };
}

function steps(): StepView {
  const step = (
    number: number,
    verb: string,
    inHand: string,
    more: Partial<StepView["steps"][number]>,
  ): StepView["steps"][number] => ({
    number: String(number),
    verb,
    say: "Turn the sleeve in by hand until it stands square on the plate.",
    inHand,
    handedWith: "",
    frame: rectangle(`f${number}`, 38, 20),
    decides: "",
    skip: "",
    aside: "",
    cautions: [],
    tally: [],
    ...more,
  });
  return {
    ...frame("steps-locking", portrait),
    kind: "steps",
    everyScrew: "Gauge 10–70 and handle S for every screw here.",
    sectionsBeside: true,
    subject: "Locking screw through the threaded sleeve",
    steps: [
      step(1, "Turn in the sleeve", "sleeve 3.5", {
        cautions: [{ ...caution, id: "sleeve-square" }],
      }),
      step(2, "Measure", "gauge 10–70", {
        decides: "Surgeon decides",
        skip: "Only if the surgeon asks: the screw cuts its own thread.",
        aside: "Left out where the marks were read: instructions for use or local protocol decide.",
      }),
      step(3, "Tighten to the limit", "limiter 1.6 N·m", {
        handedWith: "driver 20, handle S",
        tally: ["1", "2", "3"],
      }),
    ],
  };
}

function tray(): TrayView {
  return {
    ...frame("tray-small", a4),
    kind: "tray",
    trayMark: "Marked MN-1",
    map: rectangle("tray-map", 180, 110),
    contents: [
      { slot: "A1", what: "drill 2.5", mark: "2.5", quantity: "2" },
      { slot: "A2", what: "drill 2.7", mark: "2.7", quantity: "2" },
    ],
    total: "Total 46 pieces",
    lookAlikes: rings,
  };
}

function theCase(): CaseView {
  return {
    ...frame("case-a", a4),
    kind: "case",
    everyScrew: "Gauge 10–70 and handle S for every screw here.",
    code: "CASE-A",
    sideWords: "RIGHT",
    plateWords: "Lower fibula plate, RIGHT, 5 holes",
    siteWords: "Brackenhollow General; trays checked 2026-10-01",
    expires: "Expires 2026-12-01. Destroy after the case.",
    map: rectangle("case-map", 160, 42),
    rows: [
      {
        order: "1",
        hole: "S3 plain part",
        called: "Screw 3.5 cortical",
        technique: "Neutral",
        hand: "guide 2.5 centred end, drill 2.5, driver 20, by hand",
        lengths: "14–20",
      },
    ],
    pull: [
      { what: "drill 2.5", pieces: "1 of 2", place: "Small tray, slot A1", status: "in tray" },
      { what: "sleeve 3.5", pieces: "1 of 0", place: "Small tray, slot A2", status: "missing" },
      { what: "gauge 10–70", pieces: "1", place: "Small tray, slot A3", status: "not checked" },
    ],
    missing: box("Missing for this case", ["Missing: sleeve 3.5", "(Small tray, slot A2)."]),
  };
}

function poster(): PosterView {
  return {
    ...frame("poster", formats["a2-landscape"]),
    kind: "poster",
    everyScrew: "Gauge 10–70 and handle S for every screw here.",
    families: [
      {
        name: "Locking: sleeve first, limiter last",
        rows: [
          {
            chains: ["threaded--locking-35--locking"],
            called: "Screw 3.5 locking",
            phrase: "as planned",
            holes: [rectangle("poster-hole", 9, 7)],
            holeWords: "threaded part",
            cells: [
              { noun: "sleeve", number: "3.5", note: "by hand" },
              { noun: "drill", number: "2.7", note: "3 rings" },
            ],
          },
        ],
      },
    ],
  };
}

function pocket(): PocketView {
  return {
    ...frame("pocket", formats["a6-landscape"]),
    kind: "pocket",
    everyScrew: "Gauge 10–70 and handle S for every screw here.",
    face: "whole",
    rows: [
      {
        chains: ["round--cortical-35--offset"],
        called: "Screw 3.5 cortical",
        phrase: "offset, for compression",
        hand: "guide 2.5 offset, drill 2.5, driver 20, by hand",
      },
    ],
    traps: box("Goes in, and is wrong.", ["Screw 3.5 locking", "in oblong 3.5: lodges."]),
  };
}

function labels(): LabelsView {
  return {
    ...frame("labels", portrait),
    kind: "labels",
    labels: [
      {
        slot: "A1",
        what: "Drill 2.7",
        mark: "marked 2.7",
        pieces: "× 2",
        tray: "Small tray, PF-1, revision 4",
        order: "GTIN 9520000000127",
      },
    ],
  };
}

function mishaps(): MishapView {
  return {
    ...frame("mishaps", a4),
    kind: "mishaps",
    rows: [
      {
        name: "The drill breaks",
        acts: ["Stop and tell the surgeon.", "Keep both pieces."],
        decides: "Surgeon decides",
        fetched: "Small tray: drill 2.5 in A1 (2).",
      },
    ],
  };
}

/** One small view of each kind of sheet, every optional part present somewhere. */
export const sampleViews: readonly SheetView[] = [
  pairing(),
  lengths(),
  plateMap(),
  steps(),
  tray(),
  theCase(),
  poster(),
  pocket(),
  labels(),
  mishaps(),
];

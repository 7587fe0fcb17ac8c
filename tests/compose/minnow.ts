import type { Catalogue } from "../../lib/model/catalogue.ts";
import type { Chain, Derived, Link, Role } from "../../lib/model/chain.ts";
import {
  type Defined,
  type DefinitionKind,
  type DefinitionOf,
  definitions,
} from "../../lib/model/definition.ts";
import type { Figure, Pictures } from "../../lib/model/figure.ts";
import type { LaidPlate } from "../../lib/model/laid-plate.ts";

const system = "minnow";
const source = { document: "minnow-ifu", section: "table 1" };

function one<K extends DefinitionKind>(
  kind: K,
  id: string,
  data: object,
): Defined<DefinitionOf<K>> {
  const facts = definitions[kind].schema.parse(data) as DefinitionOf<K>;
  return { ...facts, id, system, file: `content/systems/minnow/${kind}/${id}.yaml` };
}

function many<K extends DefinitionKind>(
  kind: K,
  list: Readonly<Record<string, object>>,
): ReadonlyMap<string, Defined<DefinitionOf<K>>> {
  return new Map(Object.entries(list).map(([id, data]) => [id, one(kind, id, data)]));
}

const instrument = (kind: string, mark: string, more: object): object => ({
  kind,
  name: `${kind} ${mark}`,
  mark,
  source,
  ...more,
});
const screw = (called: string, more: object): object => ({
  name: called.toLowerCase(),
  called,
  mark: "3.5",
  major: 3.5,
  core: 2.4,
  pitch: 1.25,
  thread: { extent: "full" },
  tip: "cutting",
  self_tapping: true,
  drive: "hexalobular-20",
  length_counts_from: "head-top",
  lengths: [
    { from: 10, to: 50, step: 2 },
    { from: 55, to: 70, step: 5 },
  ],
  source,
  ...more,
});
const zone = (kind: string, name: string, through: number, more: object): object => ({
  kind,
  name,
  through,
  source,
  ...more,
});
const seat = { seat: 6.4, seat_form: "spherical", permits: ["cortical-35"] };
const step = (id: string, verb: string, more: object = {}): object => ({
  id,
  verb,
  say: `Do ${id}.`,
  ...more,
});
const pilot = { kind: "drill", use: "pilot" };
const recipe = (name: string, more: object): object => ({
  name,
  zone_kinds: ["plain-oblong"],
  screw_classes: ["cortical"],
  source,
  ...more,
});

const catalogue: Catalogue = {
  publisher: one("publisher", "publisher", {
    name: "Minnow team",
    logo_text: "Minnow",
    ask: { role: "instrument educator", telephone: "extension 1200" },
    demo: true,
    language: "en",
    banner: "INVENTED DATA. NOT FOR CLINICAL USE.",
    defer: "The surgeon decides. Instructions for use and local protocol prevail.",
  }),
  interfaces: one("interfaces", "interfaces", {
    head_threads: { "th-35": { name: "thread 3.5", pitch: 0.8 } },
    drives: { "hexalobular-20": { name: "hexalobular 20", form: "hexalobular", across: 3.9 } },
    couplings: { small: { name: "small", across: 4 } },
  }),
  signOffs: new Map(),
  mishaps: new Map(),
  systems: many("system", {
    minnow: {
      name: "Minnow",
      maker: "Invented maker",
      generation: 2,
      generation_mark: "Two rings on the handle.",
      sizes: "3.5",
      units: { length: "mm", torque: "N·m" },
      documents: ["minnow-ifu"],
      tray_revision: "4",
      cards: { prefix: "MN", issue: "C", date: "2026-10-01", review_by: "2027-10-01" },
      length_policy: { locking: { add: 0, overshoot_below: 2, datum: "screw-length", source } },
    },
  }),
  documents: many("document", {
    "minnow-ifu": {
      title: "Minnow instructions for use",
      kind: "instructions-for-use",
      issue: "C",
      date: "2026-09-01",
    },
  }),
  cautions: many("caution", {
    "hand-finish": {
      signal: "CAUTION",
      text: "Make the last turns by hand.",
      why: "Power overshoots.",
      source,
    },
    "square-sleeve": {
      signal: "NOTICE",
      text: "The sleeve stands square.",
      why: "A tilted sleeve misleads.",
      source,
    },
  }),
  recipes: many("recipe", {
    locking: recipe("locking screw through the threaded sleeve", {
      zone_kinds: ["threaded"],
      screw_classes: ["locking"],
      required_cautions: ["hand-finish", "square-sleeve"],
      steps: [
        step("sleeve", "turn-in-sleeve", {
          uses: { kind: "threaded-sleeve" },
          cautions: ["square-sleeve"],
        }),
        step("pilot", "drill-pilot", { uses: pilot }),
        step("drive", "drive-screw", {
          uses: { kind: "driver-shaft" },
          also: [{ kind: "handle" }],
        }),
        step("limit", "tighten-to-limit", {
          uses: { kind: "torque-limiter" },
          tally: "locking-screws",
        }),
      ],
    }),
    neutral: recipe("plain-head screw, neutral", {
      steps: [
        step("aim", "aim-guide", { uses: { kind: "plain-guide", use: "pilot", end: "centred" } }),
        step("pilot", "drill-pilot", { uses: pilot }),
      ],
    }),
    compression: recipe("plain-head screw, for compression", {
      phrase: "offset, for compression",
      steps: [
        step("aim", "aim-guide", {
          uses: { kind: "plain-guide", use: "pilot", end: "offset" },
          decides: "surgeon",
        }),
      ],
    }),
    lag: recipe("plain-head screw as lag screw", {
      phrase: "as lag screw",
      steps: [step("gliding", "drill-gliding", { uses: { kind: "drill", use: "gliding" } })],
    }),
  }),
  terms: new Map(),
  sites: many("site", {
    brook: {
      name: "Brook General",
      trays: [
        {
          tray: "small",
          generation_seen: 2,
          revision_seen: "4",
          checked: { date: "2026-10-02", role: "tray lead" },
          absent: ["sleeve-35"],
          not_checked: ["gauge"],
        },
      ],
    },
  }),
  cases: many("case", {
    "case-a": {
      code: "CASE-A",
      name: "Invented case",
      side: "left",
      plate: "bar",
      holes: 2,
      site: "brook",
      prepared: "2026-10-01",
      expires: "2026-10-07",
      plan: [
        { hole: "S2", zone: "threaded-35", screw: "locking-35", recipe: "locking", order: 2 },
        {
          hole: "S1",
          zone: "oblong-35",
          screw: "cortical-35",
          recipe: "neutral",
          order: 1,
          lengths: [14, 20],
        },
      ],
    },
  }),
  zones: many("zone", {
    "threaded-35": zone("threaded", "threaded 3.5", 4.1, {
      thread: "th-35",
      permits: ["locking-35"],
    }),
    "oblong-35": zone("plain-oblong", "oblong 3.5", 4.2, { ...seat, slot: 6, travel: 1 }),
    "plain-35": zone("plain-round", "plain round 3.5", 4.2, seat),
  }),
  openings: many("opening", {
    c35: { name: "combined 3.5", zones: ["threaded-35", "oblong-35"], apart: 5, source },
    p35: { name: "round 3.5", zones: ["plain-35"], source },
  }),
  screws: many("screw", {
    "locking-35": screw("Screw 3.5 locking", {
      class: "locking",
      core: 2.8,
      head: { form: "threaded", thread: "th-35", diameter: 5.4, height: 2.5 },
      pilot: 2.7,
      torque: 1.6,
    }),
    "cortical-35": screw("Screw 3.5 cortical", {
      class: "cortical",
      head: { form: "spherical", diameter: 6, height: 2.6 },
      pilot: 2.5,
      gliding: 3.5,
    }),
  }),
  instruments: many("instrument", {
    "drill-25": instrument("drill", "2.5", {
      diameter: 2.5,
      use: "pilot",
      length: 170,
      reach: 132,
      coupling: "small",
      bands: 2,
    }),
    "drill-27": instrument("drill", "2.7", {
      diameter: 2.7,
      use: "pilot",
      length: 150,
      reach: 112,
      coupling: "small",
      bands: 3,
    }),
    "drill-35": instrument("drill", "3.5", {
      diameter: 3.5,
      use: "gliding",
      length: 110,
      reach: 80,
      coupling: "small",
    }),
    "guide-25": instrument("plain-guide", "2.5", {
      bore: 2.6,
      length: 45,
      rests_on: "plate-hole",
      use: "pilot",
      ends: [
        { name: "centred", foot: 3.7 },
        { name: "offset", foot: 3.7, offset: 1 },
      ],
    }),
    "sleeve-35": instrument("threaded-sleeve", "3.5", {
      thread: "th-35",
      bore: 2.8,
      outer: 6,
      length: 36,
    }),
    gauge: instrument("depth-gauge", "10–70", {
      scale: { from: 10, to: 70, step: 1 },
      hook: 1.7,
      reads: "screw-length",
      seat: "plate-hole",
      length: 180,
    }),
    "tap-35": instrument("tap", "3.5", {
      diameter: 3.5,
      pitch: 1.25,
      length: 110,
      coupling: "small",
    }),
    "driver-20": instrument("driver-shaft", "20", {
      drive: "hexalobular-20",
      coupling: "small",
      length: 100,
    }),
    handle: instrument("handle", "S", { coupling: "small", length: 120 }),
    "limiter-16": instrument("torque-limiter", "1.6", {
      torque: 1.6,
      coupling_in: "small",
      coupling_out: "small",
      hand_only: true,
      signal: "a click",
      length: 90,
    }),
  }),
  plates: many("plate", {
    bar: {
      name: "Straight plate",
      mark: "SP",
      family: "straight",
      side: "none",
      stiffness: "stiff",
      thickness: { shaft: 3.3 },
      variants: [{ holes: 2, length: 40 }],
      proximal: "start",
      end_cue: "the narrow end",
      up_face: "The etched face lies up.",
      outline: [{ at: [0, -5] }, { at: [40, -5] }, { at: [40, 5] }],
      tail: 10,
      row: {
        prefix: "S",
        opening: "c35",
        first: [10, 0],
        pitch: 20,
        region: "shaft",
        threaded_end: "distal",
      },
      source,
    },
  }),
  trays: many("tray", {
    small: {
      name: "Small tray",
      mark: "MN-1",
      revision: "7",
      grid: { columns: 8, rows: 4 },
      size: { width: 240, height: 120 },
      total: 52,
      source,
      slots: [
        { holds: "instrument", slot: "A1", at: [0, 0], instrument: "drill-25", quantity: 2 },
        { holds: "instrument", slot: "A2", at: [1, 0], instrument: "drill-27", quantity: 2 },
        { holds: "instrument", slot: "A3", at: [2, 0], instrument: "sleeve-35", quantity: 2 },
        { holds: "instrument", slot: "A4", at: [3, 0], instrument: "gauge", quantity: 1 },
        {
          holds: "rack",
          slot: "B1",
          at: [0, 1],
          screw: "cortical-35",
          quantity: 2,
          except: [{ length: 36, quantity: 0 }],
        },
      ],
    },
  }),
  procedures: many("procedure", {
    straight: {
      name: "Straight plate, order of work",
      families: ["straight"],
      source,
      cautions: ["hand-finish"],
      steps: [
        step("hold", "hold"),
        step("first", "drive-screw", {
          fills: {
            recipe: "neutral",
            screw: "cortical-35",
            zone: "oblong-35",
            region: "shaft",
            repeat: "one",
          },
        }),
      ],
    },
  }),
};

const link = (role: Role, query: Link["query"], id?: string, more: Partial<Link> = {}): Link => ({
  role,
  query,
  ...(id ? { instrument: id } : {}),
  required: true,
  verdicts: [],
  ...more,
});
const drill = { kind: "drill", use: "pilot" } as const;
const driven = [
  link("driver", { kind: "driver-shaft" }, "driver-20"),
  link("handle", { kind: "handle" }, "handle"),
];
const guided = (end: "centred" | "offset"): readonly Link[] => [
  link("guide", { kind: "plain-guide", use: "pilot", end }, "guide-25", { end }),
  link("pilot-drill", drill, "drill-25"),
  link("gauge", { kind: "depth-gauge" }, "gauge"),
  link("tap", { kind: "tap" }, "tap-35", { required: false }),
  ...driven,
];
const chain = (
  zoneId: string,
  screwId: string,
  recipeId: string,
  links: readonly Link[],
): Chain => ({
  id: `${zoneId}--${screwId}--${recipeId}`,
  system,
  zone: zoneId,
  screw: screwId,
  recipe: recipeId,
  links,
});
const glided = [
  link("gliding-drill", { kind: "drill", use: "gliding" }, "drill-35"),
  ...guided("centred"),
];

const plate: LaidPlate = {
  id: "bar-2",
  plate: "bar",
  system,
  name: "Straight plate",
  side: "none",
  holesInRow: 2,
  length: 40000,
  statedLength: 40000,
  proximal: "start",
  outline: { start: [0, -5000], segments: [{ line: [40000, -5000] }, { line: [40000, 5000] }] },
  holes: [10000, 30000].map((x, index) => ({
    label: `S${index + 1}`,
    opening: "c35",
    kind: "combined",
    region: "shaft",
    at: [x, 0],
    threadedEnd: "distal",
    zones: [
      { zone: "threaded-35", kind: "threaded", at: [x + 2500, 0] },
      { zone: "oblong-35", kind: "plain-oblong", at: [x - 2500, 0] },
    ],
  })),
  bounds: { min: [0, -5000], max: [40000, 5000] },
};

const derived: Derived = {
  chains: [
    chain("threaded-35", "locking-35", "locking", [
      link("sleeve", { kind: "threaded-sleeve" }, "sleeve-35"),
      link("pilot-drill", drill, "drill-27"),
      link("gauge", { kind: "depth-gauge" }, "gauge"),
      ...driven,
      link("limiter", { kind: "torque-limiter" }, "limiter-16"),
    ]),
    chain("oblong-35", "cortical-35", "neutral", guided("centred")),
    chain("plain-35", "cortical-35", "neutral", guided("centred")),
    chain("oblong-35", "cortical-35", "compression", guided("offset")),
    chain("oblong-35", "cortical-35", "lag", glided),
  ],
  gaps: [],
  screwTraps: [
    {
      zone: "plain-35",
      zoneSystem: system,
      screw: "locking-35",
      screwSystem: system,
      head: "lodges",
    },
    {
      zone: "threaded-35",
      zoneSystem: system,
      screw: "cortical-35",
      screwSystem: system,
      head: "lodges",
    },
  ],
  drillTraps: [{ drill: "drill-25", through: "sleeve-35", belongs: ["drill-27"], play: 300 }],
  lengthTables: new Map([
    [
      "locking-35",
      {
        screw: "locking-35",
        gauge: "gauge",
        add: 0,
        readings: [
          { reading: 15000, answer: { kind: "next", length: 16000, over: 1000 } },
          { reading: 16000, answer: { kind: "next", length: 16000, over: 0 } },
          {
            reading: 51000,
            answer: { kind: "gap", shorter: 50000, longer: 55000, short: 1000, long: 4000 },
          },
          {
            reading: 52000,
            answer: { kind: "gap", shorter: 50000, longer: 55000, short: 2000, long: 3000 },
          },
          {
            reading: 53000,
            answer: { kind: "gap", shorter: 50000, longer: 55000, short: 3000, long: 2000 },
          },
          { reading: 71000, answer: { kind: "above", longest: 70000 } },
        ],
      },
    ],
  ]),
  lookAlikes: [
    {
      a: "drill-25",
      b: "drill-27",
      what: "drill",
      tells: ["2 rings", "3 rings"],
      atAGlance: false,
      near: "tray",
      score: 48,
    },
  ],
  doubleNumbers: [],
  soundAlikes: new Map(),
  plates: [plate],
};

const figure = (id: string, width = 20, height = 8): Figure => ({
  id,
  svg: `<svg id="${id}"></svg>`,
  title: id,
  description: id,
  width,
  height,
});

const pictures: Pictures = {
  textWidth: (text, size) => text.length * 0.44 * size,
  hole: (id, kind, use) => figure(`${id}-${kind}${use === undefined ? "" : `-${use}`}`),
  bendMark: (id) => figure(id),
  workingEnd: (id, { id: part }) => figure(`${id}-${part}`),
  wholeInstrument: (id) => figure(id),
  screw: (id) => figure(id),
  section: (id, view, _parts, _interfaces, size) =>
    figure(`${id}-${view}`, size.width, size.height),
  deadReading: (id, _reading, _parts, _interfaces, size) => figure(id, size.width, size.height),
  plateMap: (id, _plate, size) => ({
    ...figure(id, size.width, size.height),
  }),
  plateSide: (id) => figure(id),
  alikePair: (id) => figure(id),
  backTable: (id) => figure(id),
  plateOutline: (id) => figure(id),
  step: (id, verb) => figure(`${id}-${verb}`),
  trayMap: (id, _tray, _slots, _interfaces, size) => figure(id, size.width, size.height),
  sign: (id) => figure(id),
  scaleBar: (id) => figure(id, 50, 4),
  cardCode: (id) => figure(id, 10, 10),
};

/** A small invented library with two screws, a plate of two combined openings, a tray and a case, already derived. */
export const minnow = { catalogue, derived, pictures, today: "2026-10-02" };

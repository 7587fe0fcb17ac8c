const source = { document: "pebblefin-ifu", section: "Table 1" };
const part = { name: "part", mark: "0", source };
const coupling = "shaft-small";

const drill = (name: string, diameter: number, use: string, reach: number, bands: number) => ({
  ...part, kind: "drill", name: `drill ${name}`, mark: name, diameter, use, length: reach + 38, reach, coupling: "drill-small", bands,
});
const driver = (number: string) => ({ ...part, kind: "driver-shaft", name: `driver ${number}`, mark: number, drive: `hexalobular-${number}`, coupling, length: 90 });
const limiter = (torque: number) => ({
  ...part, kind: "torque-limiter", name: `limiter ${torque}`, mark: String(torque), torque, coupling_in: coupling, coupling_out: coupling, hand_only: true, signal: "one click", length: 60,
});
const cell = (index: number) => ({ slot: `${"ABCD"[Math.floor(index / 10)]}${(index % 10) + 1}`, at: [index % 10, Math.floor(index / 10)] });

const instruments: Readonly<Record<string, unknown>> = {
  "sleeve-35": { ...part, kind: "threaded-sleeve", name: "sleeve 3.5", mark: "3.5", thread: "th-35", bore: 2.8, outer: 6, length: 36 },
  "sleeve-27": { ...part, kind: "threaded-sleeve", name: "sleeve 2.7", mark: "2.7", thread: "th-27", bore: 2.1, outer: 5, length: 30 },
  "drill-20": drill("2.0", 2.0, "pilot", 94, 1),
  "drill-25": drill("2.5", 2.5, "pilot", 132, 2),
  "drill-27-pilot": drill("2.7", 2.7, "pilot", 112, 3),
  "drill-27-gliding": drill("2.7 G", 2.7, "gliding", 70, 2),
  "drill-35": drill("3.5", 3.5, "gliding", 80, 2),
  "guide-25": {
    ...part, kind: "plain-guide", name: "guide 2.5", mark: "2.5", bore: 2.6, length: 45, rests_on: "plate-hole", use: "pilot",
    ends: [{ name: "centred", foot: 3.7 }, { name: "offset", foot: 3.7, offset: 1, says: "arrow, towards the fracture" }, { name: "free", foot: 3.7 }],
  },
  "guide-35-gliding": { ...part, kind: "plain-guide", name: "gliding guide 3.5", mark: "3.5", bore: 3.6, length: 40, rests_on: "seat", use: "gliding", ends: [{ name: "free", foot: 5.6 }] },
  "insert-35-25": { ...part, kind: "reduction-insert", name: "insert 3.5 to 2.5", mark: "3.5/2.5", outer: 3.4, bore: 2.6, length: 48 },
  "gauge-small": { ...part, kind: "depth-gauge", name: "gauge 10 to 70", mark: "10-70", scale: { from: 10, to: 70, step: 1 }, hook: 1.7, reads: "screw-length", seat: "plate-hole", length: 180 },
  "tap-35": { ...part, kind: "tap", name: "tap 3.5", mark: "3.5", diameter: 3.5, pitch: 1.25, length: 110, coupling },
  "countersink-35": { ...part, kind: "countersink", name: "countersink 3.5", mark: "3.5", pilot: 2.5, head: 6, form: "spherical", length: 100, coupling },
  "driver-10": driver("10"),
  "driver-20": driver("20"),
  "handle-small": { ...part, kind: "handle", name: "handle S", mark: "S", coupling, length: 110 },
  "limiter-09": limiter(0.9),
  "limiter-16": limiter(1.6),
};

const screw = { self_tapping: true, thread: { extent: "full" }, tip: "cutting", length_counts_from: "head-top", source };
const runs = [{ from: 10, to: 50, step: 2 }, { from: 55, to: 70, step: 5 }];
const locking = (size: string, more: object) => ({ ...screw, name: `locking screw ${size}`, called: `Screw ${size} locking`, mark: size, class: "locking", ...more });

const pilot = { id: "pilot", verb: "drill-pilot", say: "Drill both cortices.", uses: { kind: "drill", use: "pilot" } };
const measure = { id: "measure", verb: "measure", say: "Measure in the hole.", uses: { kind: "depth-gauge" } };
const tap = { id: "tap", verb: "tap", say: "Tap when the surgeon asks.", uses: { kind: "tap" }, skip: { when: "The screw cuts its own thread.", by: "surgeon" } };
const drive = { id: "drive", verb: "drive-screw", say: "Put the screw in.", uses: { kind: "driver-shaft" }, also: [{ kind: "handle" }] };
const tighten = { id: "tighten", verb: "tighten-by-hand", say: "Tighten by hand." };
const plainRecipe = { zone_kinds: ["plain-round", "plain-oblong"], screw_classes: ["cortical", "cancellous"], source };

const fill = (recipe: string, one: string, zone: string) => ({ recipe, screw: one, zone, region: "shaft", repeat: "each-planned" });

/** A small whole library, "kind/id" to what its file would hold (mm, N·m), on which examples of rules are tried. */
export const referenceLibrary: Readonly<Record<string, unknown>> = {
  "publisher/publisher": {
    name: "Education team", logo_text: "Logo", ask: { role: "instrument educator", telephone: "1200" }, demo: true, language: "en",
    defer: "The surgeon decides. Instructions for use and local protocol prevail.",
  },
  "interfaces/interfaces": {
    head_threads: { "th-27": { name: "head thread 2.7", pitch: 0.6 }, "th-35": { name: "head thread 3.5", pitch: 0.8 } },
    drives: {
      "hexalobular-10": { name: "hexalobular 10", form: "hexalobular", across: 2.8 },
      "hexalobular-20": { name: "hexalobular 20", form: "hexalobular", across: 3.9 },
      "hexalobular-30": { name: "hexalobular 30", form: "hexalobular", across: 5.6 },
    },
    couplings: { "drill-small": { name: "small drill coupling", across: 3 }, "shaft-small": { name: "small shaft coupling", across: 4 }, "shaft-large": { name: "large shaft coupling", across: 6 } },
  },
  "document/pebblefin-ifu": { title: "Pebblefin instructions for use", kind: "instructions-for-use", system: "pebblefin", issue: "C", date: "2026-09-01" },
  "caution/no-power": { signal: "WARNING", text: "No power for the last turns.", why: "A limiter turned by power lets too much through.", source },
  "system/pebblefin": {
    name: "Pebblefin", maker: "Oakwhistle Demo Works (fictional)", generation: 2, generation_mark: "Two rings on the tray handle.", sizes: "2.7 and 3.5",
    units: { length: "mm", torque: "N·m" }, documents: ["pebblefin-ifu"], tray_revision: "4", cards: { prefix: "PF", issue: "C", date: "2026-10-01", review_by: "2027-10-01" },
  },
  "recipe/locking-through-sleeve": {
    name: "locking screw through the threaded sleeve", zone_kinds: ["threaded"], screw_classes: ["locking"], required_cautions: ["no-power"], source,
    steps: [
      { id: "sleeve", verb: "turn-in-sleeve", say: "Turn the sleeve in by hand until it stands square.", uses: { kind: "threaded-sleeve" } },
      { ...pilot, say: "Drill through the sleeve." },
      { id: "out", verb: "take-out", say: "Take the sleeve out." },
      measure,
      drive,
      { id: "limit", verb: "tighten-to-limit", say: "Tighten by hand until it clicks once.", uses: { kind: "torque-limiter" }, also: [{ kind: "handle" }], cautions: ["no-power"] },
    ],
  },
  "recipe/cortical-neutral": {
    ...plainRecipe, name: "plain-head screw, neutral",
    steps: [{ id: "guide", verb: "aim-guide", say: "Hold the centred end in the slot.", uses: { kind: "plain-guide", use: "pilot", end: "centred" } }, pilot, measure, tap, drive, tighten],
  },
  "recipe/cortical-compression": {
    ...plainRecipe, zone_kinds: ["plain-oblong"], needs: ["travel"], name: "plain-head screw, compression", phrase: "offset, for compression",
    steps: [{ id: "guide", verb: "aim-guide", say: "Hold the offset end in the slot, arrow towards the fracture.", uses: { kind: "plain-guide", use: "pilot", end: "offset" } }, pilot, measure, tap, drive, tighten],
  },
  "recipe/lag-through-plate": {
    ...plainRecipe, needs: ["gliding"], default: false, name: "lag screw through the plate", phrase: "as lag screw",
    steps: [
      { id: "guide", verb: "aim-guide", say: "Hold the guide on the seat.", uses: { kind: "plain-guide", use: "gliding", end: "free" } },
      { id: "gliding", verb: "drill-gliding", say: "Drill the near side only.", uses: { kind: "drill", use: "gliding" }, near_cortex_only: true },
      { id: "insert", verb: "place-insert", say: "Put the insert in.", uses: { kind: "reduction-insert" } },
      { ...pilot, say: "Drill the far side." }, measure, tap, drive, tighten,
    ],
  },
  "zone/threaded-27": { kind: "threaded", name: "threaded hole 2.7", through: 3.2, thread: "th-27", permits: ["locking-27"], source },
  "zone/threaded-35": { kind: "threaded", name: "threaded part 3.5", through: 4.1, thread: "th-35", permits: ["locking-35"], source },
  "zone/oblong-35": { kind: "plain-oblong", name: "oblong 3.5", through: 4.2, slot: 6, seat: 6.4, seat_form: "spherical", travel: 1, permits: ["cortical-35"], source },
  "opening/t27": { name: "threaded hole 2.7", zones: ["threaded-27"], source },
  "opening/c35": { name: "combined opening 3.5", zones: ["threaded-35", "oblong-35"], apart: 5, source },
  "screw/locking-27": locking("2.7", {
    major: 2.7, core: 2.1, pitch: 1, head: { form: "threaded", thread: "th-27", diameter: 4.4, height: 2 }, drive: "hexalobular-10", pilot: 2, torque: 0.9, lengths: [{ from: 10, to: 50, step: 2 }],
  }),
  "screw/locking-35": locking("3.5", {
    major: 3.5, core: 2.8, pitch: 1.25, head: { form: "threaded", thread: "th-35", diameter: 5.4, height: 2.4 }, drive: "hexalobular-20", pilot: 2.7, torque: 1.6, lengths: runs,
  }),
  "screw/cortical-35": {
    ...screw, name: "cortical screw 3.5", called: "Screw 3.5 cortical", mark: "3.5", class: "cortical", major: 3.5, core: 2.4, pitch: 1.25,
    head: { form: "spherical", diameter: 6, height: 2.8 }, drive: "hexalobular-20", pilot: 2.5, gliding: 3.5, lengths: runs,
  },
  ...Object.fromEntries(Object.entries(instruments).map(([id, facts]) => [`instrument/${id}`, facts])),
  "plate/lower-fibula-left": {
    name: "lower fibula plate, left", mark: "LF L", family: "lower-fibula", side: "left", stiffness: "stiff", thickness: { head: 1.6, shaft: 2.4 },
    variants: [{ holes: 3, length: 54 }, { holes: 5, length: 80 }], proximal: "end", end_cue: "the narrow end", up_face: "The etched face lies up.",
    outline: [{ at: [0, -6] }, { from: "end", at: [0, -6] }, { from: "end", at: [0, 6] }, { at: [0, 6] }],
    tail: 8, row: { prefix: "S", opening: "c35", first: [20, 0], pitch: 13, region: "shaft", threaded_end: "proximal" },
    holes: [{ label: "H1", opening: "t27", at: [5, -3], region: "head" }, { label: "H2", opening: "t27", at: [9, 2], region: "head" }], source,
  },
  "plate/lower-fibula-right": { name: "lower fibula plate, right", mark: "LF R", side: "right", mirror_of: "lower-fibula-left", source },
  "tray/small": {
    name: "small tray", mark: "PF-1", revision: "4", grid: { columns: 10, rows: 4 }, size: { width: 300, height: 200 }, total: 93, source,
    slots: [
      ...Object.keys(instruments).map((instrument, index) => ({ holds: "instrument", ...cell(index), instrument, quantity: 1 })),
      ...["locking-27", "locking-35", "cortical-35"].map((one, index) => ({ holds: "rack", ...cell(20 + index), screw: one, quantity: 1 })),
      ...["left", "right"].flatMap((side, index) => [3, 5].map((holes, place) => ({ holds: "plate", ...cell(30 + 2 * index + place), plate: `lower-fibula-${side}`, holes, quantity: 1 }))),
    ],
  },
  "procedure/lower-fibula": {
    name: "lower fibula plate", families: ["lower-fibula"], source,
    steps: [
      { id: "hold", verb: "hold", say: "Hold the plate to the bone." },
      { id: "plain", verb: "drive-screw", say: "Put the plain-head screw in.", fills: fill("cortical-neutral", "cortical-35", "oblong-35") },
      { id: "locking", verb: "drive-screw", say: "Put the locking screws in.", fills: fill("locking-through-sleeve", "locking-35", "threaded-35") },
      { id: "pass", verb: "final-pass", say: "Tighten every locking screw again by hand, and tick each.", tally: "locking-screws" },
    ],
  },
  "site/brackenhollow": { name: "Brackenhollow General", trays: [{ tray: "small", generation_seen: 2, revision_seen: "4", checked: { date: "2026-10-01", role: "instrument educator" } }] },
  "case/case-a": {
    code: "CASE-A", name: "lower fibula, five holes", side: "left", plate: "lower-fibula-left", holes: 5, site: "brackenhollow", prepared: "2026-10-01", expires: "2026-10-06",
    plan: [
      { hole: "S1", zone: "oblong-35", screw: "cortical-35", recipe: "cortical-neutral", order: 1 },
      { hole: "S3", zone: "threaded-35", screw: "locking-35", recipe: "locking-through-sleeve", order: 2 },
    ],
  },
};

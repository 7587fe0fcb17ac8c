import { type DefinitionKind, definitions } from "../../lib/model/definition.ts";
import type { SourceFile } from "../../lib/model/source-file.ts";

type Data = Readonly<Record<string, unknown>>;
const source = { document: "ifu", section: "table 1" };

const facts: Readonly<Record<string, Data>> = {
  "publisher/publisher": {
    name: "Team",
    logo_text: "T",
    ask: { role: "educator", telephone: "1" },
    defer: "Ask the surgeon.",
    language: "en",
  },
  "interfaces/interfaces": {
    head_threads: { "th-35": { name: "thread 3.5", pitch: 0.8 } },
    drives: { "hexalobular-20": { name: "hexalobular 20", form: "hexalobular", across: 3.9 } },
    couplings: { small: { name: "small", across: 4 } },
  },
  "system/minnow": {
    name: "Minnow",
    maker: "Invented maker",
    generation: 2,
    generation_mark: "Two rings.",
    sizes: "3.5",
    units: { length: "mm", torque: "N·m" },
    documents: ["ifu"],
    tray_revision: "4",
    cards: { prefix: "MN", issue: "C", date: "2026-10-01", review_by: "2027-10-01" },
  },
  "document/ifu": {
    title: "Instructions",
    kind: "instructions-for-use",
    issue: "C",
    date: "2026-09-01",
  },
  "caution/hand-finish": { signal: "CAUTION", text: "By hand.", why: "Power overshoots.", source },
  "recipe/locking": {
    name: "locking screw",
    zone_kinds: ["threaded"],
    screw_classes: ["locking"],
    required_cautions: ["hand-finish"],
    source,
    steps: [
      {
        id: "drill",
        verb: "drill-pilot",
        say: "Drill.",
        cautions: ["hand-finish"],
        uses: { kind: "drill", use: "pilot" },
      },
    ],
  },
  "zone/threaded-35": {
    kind: "threaded",
    name: "threaded part 3.5",
    through: 3.6,
    thread: "th-35",
    permits: ["locking-35"],
    source,
  },
  "zone/wire-15": { kind: "wire", name: "wire hole", through: 1.6, source },
  "opening/threaded": { name: "threaded hole", zones: ["threaded-35"], source },
  "opening/wire": { name: "wire hole", zones: ["wire-15"], source },
  "screw/locking-35": {
    name: "locking screw 3.5",
    called: "Screw 3.5 locking",
    mark: "3.5",
    class: "locking",
    major: 3.5,
    core: 2.9,
    pitch: 0.8,
    thread: { extent: "full" },
    tip: "cutting",
    self_tapping: true,
    head: { form: "threaded", thread: "th-35", diameter: 4.8, height: 2 },
    drive: "hexalobular-20",
    pilot: 2.8,
    torque: 1.6,
    length_counts_from: "head-top",
    lengths: [{ from: 10, to: 50, step: 2 }],
    source,
  },
  "instrument/drill-28": {
    kind: "drill",
    name: "drill 2.8",
    mark: "2.8",
    diameter: 2.8,
    use: "pilot",
    length: 180,
    reach: 120,
    coupling: "small",
    source,
  },
  "plate/bar-left": {
    name: "Left bar",
    mark: "L",
    family: "bar",
    side: "left",
    stiffness: "stiff",
    thickness: { shaft: 3 },
    variants: [{ holes: 4, length: 60 }],
    proximal: "start",
    end_cue: "the narrow end",
    up_face: "The marked face lies up.",
    outline: [{ at: [0, 0] }, { at: [60, 0] }, { at: [60, 10] }],
    tail: 6,
    row: { prefix: "S", opening: "threaded", first: [6, 0], pitch: 12, region: "shaft" },
    holes: [{ label: "W1", opening: "wire", at: [2, 0], region: "head" }],
    source,
  },
  "plate/bar-right": { name: "Right bar", mark: "R", side: "right", mirror_of: "bar-left", source },
  "tray/small": {
    name: "Small tray",
    mark: "A",
    revision: "4",
    grid: { columns: 4, rows: 2 },
    size: { width: 200, height: 100 },
    total: 3,
    source,
    slots: [
      { holds: "instrument", slot: "A1", at: [0, 0], instrument: "drill-28", quantity: 1 },
      { holds: "rack", slot: "A2", at: [1, 0], screw: "locking-35", quantity: 1 },
      { holds: "plate", slot: "A3", at: [2, 0], plate: "bar-left", holes: 4, quantity: 1 },
    ],
  },
  "procedure/bar": {
    name: "Bar",
    families: ["bar"],
    source,
    steps: [
      {
        id: "fill",
        verb: "drive-screw",
        say: "Fill.",
        fills: {
          recipe: "locking",
          screw: "locking-35",
          zone: "threaded-35",
          region: "shaft",
          repeat: "one",
        },
      },
    ],
  },
  "site/brook": {
    name: "Brook",
    trays: [
      {
        tray: "small",
        generation_seen: 2,
        revision_seen: "4",
        checked: { date: "2026-10-02", role: "lead" },
        absent: ["drill-28"],
      },
    ],
  },
  "case/case-a": {
    code: "CASE-A",
    name: "Case",
    side: "left",
    plate: "bar-left",
    holes: 4,
    site: "brook",
    prepared: "2026-10-01",
    expires: "2026-10-07",
    procedure: "bar",
    plan: [{ hole: "S1", zone: "threaded-35", screw: "locking-35", recipe: "locking", order: 1 }],
  },
};

/** A change to the small library: "kind/id", the keys that lead to the value, and the new value. */
export type Change = readonly [
  definition: string,
  path: readonly (string | number)[],
  value: unknown,
];

/** The sources of a small library that holds together, with one change. */
export function smallLibrary(change?: Change): SourceFile[] {
  return Object.entries(facts).map(([name, data]) => {
    const [kind, id] = name.split("/") as [DefinitionKind, string];
    const copy = structuredClone(data);
    if (change && change[0] === name) {
      const holder = change[1]
        .slice(0, -1)
        .reduce<unknown>((at, key) => (at as Record<string | number, unknown>)[key], copy);
      (holder as Record<string | number, unknown>)[change[1].at(-1) ?? ""] = change[2];
    }
    return {
      file: `${kind}s/${id}.yaml`,
      kind,
      id,
      system: definitions[kind].scope.startsWith("system") ? "minnow" : "general",
      data: copy,
    };
  });
}

import { describe, expect, it } from "vitest";
import { check } from "../../lib/check/check.ts";
import { rules } from "../../lib/check/rules.ts";
import { derive } from "../../lib/derive/derive.ts";
import { editedLibrary } from "./edited-library.ts";
import { referenceLibrary } from "./reference-library.ts";

/** Where a limit's faults lie: under a least, over a most, either side of an exact number; `over` and `under` leave out the limit itself. */
const faulty = {
  least: [true, false, false],
  most: [false, false, true],
  exact: [true, false, true],
  over: [true, true, false],
  under: [false, true, true],
} as const;
type Row = readonly [
  rule: string,
  at: string,
  bound: keyof typeof faulty,
  limit: number,
  beside?: Readonly<Record<string, unknown>>,
];

const edit = (key: string, value: unknown) => {
  const [file = "", path = ""] = key.split(" ");
  const keys = path === "" ? [] : path.split(".");
  return { file, path: keys.map((part) => (/^\d+$/.test(part) ? Number(part) : part)), value };
};

/** True where a rule speaks as gravely as it can of the library with one number changed: a rule that stops may also tell. */
function faults(id: string, edits: Readonly<Record<string, unknown>>): boolean {
  const catalogue = editedLibrary(Object.entries(edits).map(([key, value]) => edit(key, value)));
  const rule = rules.find((one) => one.id === id);
  if (rule === undefined) throw new Error(`No rule ${id}`);
  return check({ catalogue, derived: derive(catalogue), today: "2026-10-02" }, [rule]).some(
    ({ severity }) => severity === rule.severity || severity !== "note",
  );
}

const tray = referenceLibrary["tray/small"] as object;
const source = { document: "pebblefin-ifu", section: "Table 1" };
const wire = {
  "instrument/wire-16": {
    kind: "wire",
    name: "wire 1.6",
    mark: "1.6",
    diameter: 1.6,
    tip: "trocar",
    length: 150,
    source,
  },
  "opening/wire": { name: "wire hole 1.6", zones: ["wire-16"], source },
  "zone/wire-16": { kind: "wire", name: "wire hole 1.6", through: 1.7, source },
};
const thin = {
  "plate/thin": {
    name: "thin plate",
    mark: "TS",
    family: "thin",
    side: "none",
    stiffness: "thin-shell",
    thickness: { shaft: 1 },
    variants: [{ holes: 3, length: 42 }],
    proximal: "start",
    end_cue: "either end",
    up_face: "The etched face lies up.",
    outline: [{ at: [0, -5] }, { from: "end", at: [0, -5] }, { from: "end", at: [0, 5] }],
    tail: 8,
    row: { prefix: "S", opening: "t27", first: [8, 0], pitch: 13, region: "shaft" },
    source,
  },
};
const twin = {
  "zone/round-35": {
    kind: "plain-round",
    name: "plain round hole 3.5",
    through: 4.2,
    seat: 6.4,
    seat_form: "spherical",
    permits: [],
    source,
  },
};

const rows: readonly Row[] = [
  ["sleeve-guides-the-drill", "instrument/sleeve-35 bore", "least", 2.75],
  ["sleeve-guides-the-drill", "instrument/sleeve-35 bore", "most", 2.9],
  ["sleeve-guides-the-drill", "instrument/guide-25 bore", "least", 2.55],
  ["sleeve-guides-the-drill", "instrument/guide-25 bore", "most", 2.7],
  ["sleeve-guides-the-drill", "instrument/insert-35-25 bore", "least", 2.55],
  ["sleeve-guides-the-drill", "instrument/insert-35-25 bore", "most", 2.7],
  ["drill-reaches-the-longest-screw", "instrument/drill-27-pilot reach", "least", 106],
  ["drill-reaches-the-longest-screw", "instrument/drill-25 reach", "least", 118],
  ["drill-is-longer-than-its-reach", "instrument/drill-25 length", "over", 132],
  ["gliding-drill-leaves-its-guide", "instrument/drill-35 reach", "over", 40],
  ["gauge-is-longer-than-its-scale", "instrument/gauge-small length", "over", 60],
  ["gauge-reads-the-whole-rack", "instrument/gauge-small scale.from", "most", 10],
  ["gauge-reads-the-whole-rack", "instrument/gauge-small scale.to", "least", 70],
  ["gauge-reads-the-whole-rack", "instrument/gauge-small hook", "under", 2],
  ["pilot-suits-the-core", "screw/cortical-35 pilot", "least", 2.4],
  ["pilot-suits-the-core", "screw/cortical-35 pilot", "most", 2.975],
  ["pilot-suits-the-core", "screw/locking-35 pilot", "least", 2.6],
  ["pilot-suits-the-core", "screw/locking-35 pilot", "most", 2.8],
  ["permitted-screw-fits-its-hole", "zone/oblong-35 through", "least", 3.5],
  ["permitted-screw-fits-its-hole", "zone/oblong-35 through", "most", 5.2],
  ["permitted-screw-fits-its-hole", "zone/oblong-35 seat", "least", 6],
  ["permitted-screw-fits-its-hole", "zone/threaded-35 through", "least", 3.5],
  ["screw-numbers-agree", "screw/cortical-35 core", "least", 1.4],
  ["screw-numbers-agree", "screw/cortical-35 core", "most", 3.15],
  ["screw-numbers-agree", "screw/cortical-35 pitch", "least", 0.875],
  ["screw-numbers-agree", "screw/cortical-35 pitch", "most", 1.75],
  ["screw-numbers-agree", "screw/cortical-35 head.diameter", "most", 7.7],
  ["screw-numbers-agree", "screw/cortical-35 head.height", "least", 1.4],
  ["screw-numbers-agree", "screw/cortical-35 head.height", "most", 3.85],
  ["screw-numbers-agree", "screw/cortical-35 shaft", "least", 2.4],
  ["screw-numbers-agree", "screw/cortical-35 shaft", "most", 3.5],
  ["screw-numbers-agree", "interfaces/interfaces drives.hexalobular-10.across", "least", 1.54],
  ["screw-numbers-agree", "interfaces/interfaces drives.hexalobular-10.across", "most", 3.74],
  ["offset-end-shifts-by-the-travel", "instrument/guide-25 ends.1.offset", "exact", 1],
  ["limiter-belongs-to-the-screw", "instrument/limiter-16 torque", "exact", 1.6],
  ["mark-says-the-size", "instrument/drill-25 diameter", "exact", 2.5],
  ["tap-cuts-a-screws-thread", "instrument/tap-35 pitch", "exact", 1.25],
  ["stiff-plate-is-the-thicker", "plate/thin thickness.shaft", "most", 1.6, thin],
  ["part-fits-its-slot", "instrument/drill-25 length", "most", 200.561],
  ["hole-is-clear-of-the-middle-line", "plate/lower-fibula-left holes.1.at.1", "least", 0.5],
  ["stated-length-is-the-outlines-length", "plate/lower-fibula-left tail", "least", 7.9],
  ["stated-length-is-the-outlines-length", "plate/lower-fibula-left tail", "most", 8.1],
  ["wire-passes-its-hole", "zone/wire-16 through", "least", 1.6, wire],
  ["wire-passes-its-hole", "zone/wire-16 through", "most", 1.9, wire],
  ["hole-is-named-for-what-it-takes", "zone/wire-16 through", "least", 1.6, wire],
  ["hole-is-named-for-what-it-takes", "zone/wire-16 through", "most", 1.9, wire],
  ["lengths-are-whole", "instrument/drill-25 length", "exact", 170.5],
  [
    "tray-can-be-lifted",
    "tray/small weight",
    "most",
    8,
    {
      "tray/small": tray,
      "site/brackenhollow lift_limit": 8,
    },
  ],
];

const cases = rows.map(([rule, at, bound, limit, beside = {}]) => ({
  rule,
  at,
  bound,
  limit,
  beside,
}));

describe.each(cases)("$rule, $at: $bound $limit", ({ rule, at, bound, limit, beside }) => {
  it.each([-1, 0, 1])("%d thousandths from the limit", (off) => {
    const value = Math.round(limit * 1000 + off) / 1000;
    expect(faults(rule, { ...beside, [at]: value })).toBe(faulty[bound][off + 1]);
  });
});

it("takes holes as alike exactly where their widths are equal", () => {
  const widths = [4.199, 4.2, 4.201].map((through) =>
    faults("alike-holes-permit-alike", { ...twin, "zone/round-35 through": through }),
  );
  expect(widths).toEqual([false, true, false]);
});

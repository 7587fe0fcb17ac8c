import { expect, it } from "vitest";
import { derive } from "../../lib/derive/derive.ts";
import { catalogueOf, type Records } from "../fixtures/catalogue-of.ts";

/** Common practice, no source: a system as it is met in theatre. Drills, sleeves and the 2 mm rule are met; cores and bores are invented. */
const source = { document: "common-practice", section: "none" };
const screw = {
  pitch: 1.25,
  thread: { extent: "full" },
  tip: "cutting",
  self_tapping: true,
  length_counts_from: "head-top",
  lengths: [{ from: 10, to: 60, step: 2 }],
  source,
};
const named = (noun: string, mark: string) => ({ name: `${noun} ${mark}`, mark, source });
const drill = (mark: string) => ({
  ...named("drill", mark),
  kind: "drill",
  diameter: Number(mark),
  use: "pilot",
  length: 150,
  reach: 110,
  coupling: "quick",
});
const sleeve = (mark: string, thread: string, bore: number) => ({
  ...named("sleeve", mark),
  kind: "threaded-sleeve",
  thread,
  bore,
  outer: 6,
  length: 36,
});
const driver = (mark: string, drive: string) => ({
  ...named("driver", mark),
  kind: "driver-shaft",
  drive,
  coupling: "shaft",
  length: 100,
});
const limiter = (mark: string, torque: number) => ({
  ...named("torque limiter", mark),
  kind: "torque-limiter",
  torque,
  coupling_in: "shaft",
  coupling_out: "shaft",
  hand_only: true,
  signal: "one click",
  length: 60,
});
const step = (id: string, verb: string, uses: object) => ({ id, verb, say: "Do it.", uses });
const pilot = step("pilot", "drill-pilot", { kind: "drill", use: "pilot" });
const measure = step("measure", "measure", { kind: "depth-gauge" });
const drive = step("drive", "drive-screw", { kind: "driver-shaft" });
const policy = { overshoot_below: 2, datum: "screw-length", source };

const library: Records = {
  "interfaces/interfaces": {
    head_threads: {
      "th-27": { name: "head thread 2.7", pitch: 0.6 },
      "th-35": { name: "head thread 3.5", pitch: 0.8 },
    },
    drives: {
      "hexalobular-8": { name: "hexalobular 8", form: "hexalobular", across: 2.4 },
      "hexalobular-15": { name: "hexalobular 15", form: "hexalobular", across: 3.3 },
    },
    couplings: {
      quick: { name: "quick coupling", across: 3 },
      shaft: { name: "shaft coupling", across: 4 },
    },
  },
  "system/theatre": {
    name: "Theatre",
    maker: "none",
    generation: 1,
    generation_mark: "None.",
    sizes: "2.7 and 3.5",
    units: { length: "mm", torque: "N·m" },
    documents: ["common-practice"],
    tray_revision: "1",
    cards: { prefix: "TH", issue: "A", date: "2026-10-01", review_by: "2027-10-01" },
    length_policy: { locking: { ...policy, add: 0 }, plain_head: { ...policy, add: 2 } },
  },
  "screw/locking-35": {
    ...screw,
    ...named("locking screw", "3.5"),
    called: "Screw 3.5 locking",
    class: "locking",
    major: 3.5,
    core: 2.9,
    head: { form: "threaded", thread: "th-35", diameter: 5.4, height: 2.4 },
    drive: "hexalobular-15",
    pilot: 2.8,
    torque: 1.5,
  },
  "screw/plain-35": {
    ...screw,
    ...named("cortical screw", "3.5"),
    called: "Screw 3.5 plain-head",
    class: "cortical",
    major: 3.5,
    core: 2.4,
    head: { form: "spherical", diameter: 6, height: 2.8 },
    drive: "hexalobular-15",
    pilot: 2.7,
  },
  "screw/locking-27": {
    ...screw,
    ...named("locking screw", "2.7"),
    called: "Screw 2.7 locking",
    class: "locking",
    major: 2.7,
    core: 2.1,
    pitch: 1,
    head: { form: "threaded", thread: "th-27", diameter: 4.4, height: 2 },
    drive: "hexalobular-8",
    pilot: 2,
    torque: 0.8,
  },
  "zone/threaded-35": {
    kind: "threaded",
    name: "threaded hole 3.5",
    through: 4.1,
    thread: "th-35",
    permits: ["locking-35"],
    source,
  },
  "zone/threaded-27": {
    kind: "threaded",
    name: "threaded hole 2.7",
    through: 3.2,
    thread: "th-27",
    permits: ["locking-27"],
    source,
  },
  "zone/plain-35": {
    kind: "plain-round",
    name: "plain hole 3.5",
    through: 4.2,
    seat: 6.4,
    seat_form: "spherical",
    permits: ["plain-35"],
    source,
  },
  "instrument/drill-28": drill("2.8"),
  "instrument/drill-27": drill("2.7"),
  "instrument/drill-20": drill("2.0"),
  "instrument/sleeve-35": sleeve("3.5", "th-35", 2.9),
  "instrument/sleeve-27": sleeve("2.7", "th-27", 2.1),
  "instrument/gauge": {
    ...named("gauge", "10-60"),
    kind: "depth-gauge",
    scale: { from: 10, to: 60, step: 1 },
    hook: 1.7,
    reads: "screw-length",
    seat: "plate-hole",
    length: 180,
  },
  "instrument/tap-35": {
    ...named("tap", "3.5"),
    kind: "tap",
    diameter: 3.5,
    pitch: 1.25,
    length: 110,
    coupling: "shaft",
  },
  "instrument/driver-27": driver("2.7", "hexalobular-8"),
  "instrument/driver-35": driver("3.5", "hexalobular-15"),
  "instrument/limiter-27": limiter("2.7", 0.8),
  "instrument/limiter-35": limiter("3.5", 1.5),
  "recipe/locking": {
    name: "locking screw through the threaded sleeve",
    zone_kinds: ["threaded"],
    screw_classes: ["locking"],
    source,
    steps: [
      step("sleeve", "turn-in-sleeve", { kind: "threaded-sleeve" }),
      pilot,
      { id: "out", verb: "take-out", say: "Take it out." },
      measure,
      drive,
      step("limit", "tighten-to-limit", { kind: "torque-limiter" }),
    ],
  },
  "recipe/plain": {
    name: "plain-head screw through the plain hole",
    zone_kinds: ["plain-round"],
    screw_classes: ["cortical"],
    source,
    steps: [pilot, measure, step("tap", "tap", { kind: "tap" }), drive],
  },
};

const derived = derive(catalogueOf(library, "theatre"));

it("derives exactly these chains", () => {
  expect(derived.gaps).toEqual([]);
  const chains = derived.chains.map(({ screw: of, links }) => [
    of,
    links.map(
      ({ role, instrument, required }) => `${role} ${instrument}${required ? "" : " when asked"}`,
    ),
  ]);
  expect(Object.fromEntries(chains)).toEqual({
    "locking-27": [
      "sleeve sleeve-27",
      "pilot-drill drill-20",
      "gauge gauge",
      "driver driver-27",
      "limiter limiter-27",
    ],
    "locking-35": [
      "sleeve sleeve-35",
      "pilot-drill drill-28",
      "gauge gauge",
      "driver driver-35",
      "limiter limiter-35",
    ],
    "plain-35": [
      "pilot-drill drill-27",
      "gauge gauge",
      "tap tap-35 when asked",
      "driver driver-35",
    ],
  });
});

it.each([
  ["locking-35", 16, 16],
  ["locking-27", 16, 16],
  ["plain-35", 16, 18],
  ["locking-35", 27, 28],
  ["plain-35", 27, 30],
])(
  "%s answers a reading of %i with %i: plain-head is locking and 2 more",
  (of, reading, length) => {
    const answer = derived.lengthTables
      .get(of)
      ?.readings.find((one) => one.reading === reading * 1000)?.answer;
    expect(answer).toMatchObject({ kind: "next", length: length * 1000 });
  },
);

it("has drill 2.7 through the sleeve made for drill 2.8 first among its traps, with 0.2 of play", () => {
  expect(derived.drillTraps[0]).toEqual({
    drill: "drill-27",
    through: "sleeve-35",
    belongs: ["drill-28"],
    play: 200,
  });
});

it("has each 3.5 screw in the other's hole among its traps", () => {
  const traps = derived.screwTraps.map(({ screw: of, zone, head }) => `${of} in ${zone} ${head}`);
  expect(traps).toEqual(
    expect.arrayContaining(["locking-35 in plain-35 lodges", "plain-35 in threaded-35 lodges"]),
  );
});

import { describe, expect, it } from "vitest";
import { derive } from "../../lib/derive/derive.ts";
import type { Chain, Role } from "../../lib/model/chain.ts";
import { catalogueOf, type Records } from "../fixtures/catalogue-of.ts";

/** Screws with a spherical head, hexagonal drive and HA (shallow) or HB (deep) thread, mm: d1, d5, P, d2 and s of ISO 5835:1991,
 * none of them read there. Where each value comes from:
 * - major: sizes named on every public page below but HA 5.0's, which is from memory.
 * - core: HA 3.5 as printed in Wheeless' Textbook of Orthopaedics, wheelessonline.com, "Cortex Screw: 3.5 mm"; HB 6.5 as printed there in
 *   "Cancellous Bone Screws: 4.5 and 6.5"; all others from memory.
 * - pitch, head, key: from memory, every row.
 * - pilot: as printed by S. K. Shrestha, "Orthopedic screw insertion", epomedicine.com, 2021 (HA 3.5 and HB 6.5 also by Wheeless); HA 5.0's from memory.
 * - tap: from memory, every row; it is the screw's own thread. */
const rows = [
  {
    type: "HA 1.5",
    class: "cortical",
    major: 1.5,
    core: 1.1,
    pitch: 0.5,
    head: 3,
    key: 1.5,
    pilot: 1.1,
    tap: 1.5,
  },
  {
    type: "HA 2.0",
    class: "cortical",
    major: 2.0,
    core: 1.3,
    pitch: 0.6,
    head: 4,
    key: 1.5,
    pilot: 1.5,
    tap: 2.0,
  },
  {
    type: "HA 2.7",
    class: "cortical",
    major: 2.7,
    core: 1.9,
    pitch: 1.0,
    head: 5,
    key: 2.5,
    pilot: 2.0,
    tap: 2.7,
  },
  {
    type: "HA 3.5",
    class: "cortical",
    major: 3.5,
    core: 2.4,
    pitch: 1.25,
    head: 6,
    key: 2.5,
    pilot: 2.5,
    tap: 3.5,
  },
  {
    type: "HA 4.0",
    class: "cortical",
    major: 4.0,
    core: 2.9,
    pitch: 1.5,
    head: 6,
    key: 2.5,
    pilot: 2.9,
    tap: 4.0,
  },
  {
    type: "HA 4.5",
    class: "cortical",
    major: 4.5,
    core: 3.0,
    pitch: 1.75,
    head: 8,
    key: 3.5,
    pilot: 3.2,
    tap: 4.5,
  },
  {
    type: "HA 5.0",
    class: "cortical",
    major: 5.0,
    core: 3.5,
    pitch: 1.75,
    head: 8,
    key: 3.5,
    pilot: 3.5,
    tap: 5.0,
  },
  {
    type: "HB 4.0",
    class: "cancellous",
    major: 4.0,
    core: 1.9,
    pitch: 1.75,
    head: 6,
    key: 2.5,
    pilot: 2.5,
    tap: 4.0,
  },
  {
    type: "HB 6.5",
    class: "cancellous",
    major: 6.5,
    core: 3.0,
    pitch: 2.75,
    head: 8,
    key: 3.5,
    pilot: 3.2,
    tap: 6.5,
  },
] as const;
type Row = (typeof rows)[number];

const source = { document: "standard", section: "Table 1" };
const slug = (...words: (string | number)[]): string =>
  words.join("-").toLowerCase().replace(/[ .]/g, "-");
const coupling = "shaft";
const ids = ({ type, tap, pitch, pilot, key }: Row) => ({
  screw: slug(type),
  zone: slug("hole", type),
  "pilot-drill": slug("drill", pilot),
  tap: slug("tap", tap, pitch),
  driver: slug("driver", key),
});

/** A hole just wide enough for one screw; its sizes follow from the screw, for no hole's sizes were read. */
const partsOf = (row: Row): Records => {
  const { type, class: kind, major, core, pitch, head, key, pilot, tap } = row;
  const id = ids(row);
  return {
    [`screw/${id.screw}`]: {
      name: `${kind} screw ${type}`,
      called: `Screw ${type}`,
      mark: type,
      class: kind,
      major,
      core,
      pitch,
      pilot,
      thread: { extent: "full" },
      tip: "rounded",
      self_tapping: false,
      head: { form: "spherical", diameter: head, height: head / 2 },
      drive: slug("hexagonal", key),
      length_counts_from: "head-top",
      lengths: [{ from: 20, to: 40, step: 5 }],
      source,
    },
    [`zone/${id.zone}`]: {
      kind: "plain-round",
      name: `hole for ${type}`,
      through: major + 0.1,
      seat: head + 0.2,
      seat_form: "spherical",
      permits: [id.screw],
      source,
    },
    [`instrument/${id["pilot-drill"]}`]: {
      kind: "drill",
      name: `drill ${pilot}`,
      mark: String(pilot),
      diameter: pilot,
      use: "pilot",
      length: 120,
      reach: 90,
      coupling: "drill",
      source,
    },
    [`instrument/${slug("gliding", major)}`]: {
      kind: "drill",
      name: `gliding drill ${major}`,
      mark: String(major),
      diameter: major,
      use: "gliding",
      length: 120,
      reach: 90,
      coupling: "drill",
      source,
    },
    [`instrument/${id.tap}`]: {
      kind: "tap",
      name: `tap ${tap}`,
      mark: String(tap),
      diameter: tap,
      pitch,
      length: 110,
      coupling,
      source,
    },
    [`instrument/${id.driver}`]: {
      kind: "driver-shaft",
      name: `driver ${key}`,
      mark: String(key),
      drive: slug("hexagonal", key),
      coupling,
      length: 100,
      source,
    },
  };
};

const step = (id: string, verb: string, uses: object) => ({ id, verb, say: "Do it.", uses });
const library: Records = {
  "interfaces/interfaces": {
    head_threads: {},
    couplings: { drill: { name: "drill", across: 3 }, shaft: { name: "shaft", across: 5 } },
    drives: Object.fromEntries(
      [1.5, 2.5, 3.5].map((key) => [
        slug("hexagonal", key),
        { name: `hexagonal ${key}`, form: "hexagonal", across: key },
      ]),
    ),
  },
  "system/standard": {
    name: "Standard sizes",
    maker: "none",
    generation: 1,
    generation_mark: "None.",
    sizes: "1.5 to 6.5",
    units: { length: "mm", torque: "N·m" },
    documents: ["standard"],
    tray_revision: "1",
    cards: { prefix: "ST", issue: "A", date: "2026-10-01", review_by: "2027-10-01" },
  },
  "recipe/plain": {
    name: "plain-head screw",
    zone_kinds: ["plain-round"],
    screw_classes: ["cortical", "cancellous"],
    source,
    steps: [
      step("pilot", "drill-pilot", { kind: "drill", use: "pilot" }),
      step("tap", "tap", { kind: "tap" }),
      step("drive", "drive-screw", { kind: "driver-shaft" }),
    ],
  },
};

const derived = derive(
  catalogueOf(Object.assign({}, library, ...rows.map(partsOf)) as Records, "standard"),
);
const chainOf = (row: Row): Chain | undefined =>
  derived.chains.find(({ screw }) => screw === ids(row).screw);
const verdictsOf = (row: Row, role: Role) =>
  chainOf(row)?.links.find((link) => link.role === role)?.verdicts ?? [];

it("closes one chain for each of the nine and leaves no gap", () => {
  expect(derived.gaps).toEqual([]);
  expect(derived.chains).toHaveLength(9);
});

it.each(rows)("$type gets drill $pilot, tap $tap with pitch $pitch, driver $key", (row) => {
  const found = Object.fromEntries(
    chainOf(row)?.links.map(({ role, instrument }) => [role, instrument]) ?? [],
  );
  const { "pilot-drill": drill, tap, driver } = ids(row);
  expect(found).toEqual({ "pilot-drill": drill, tap, driver });
});

const pairs = rows.flatMap((a) =>
  rows.filter((b) => a !== b).map((b) => ({ a, b, names: `${a.type} and ${b.type}` })),
);
const sharesAll = ({ a, b }: { a: Row; b: Row }): boolean =>
  a.key === b.key && a.head === b.head && a.pilot === b.pilot;

it("shares key, head and drill in exactly the two pairs known for it", () => {
  expect(pairs.filter(sharesAll).map(({ names }) => names)).toEqual([
    "HA 3.5 and HB 4.0",
    "HA 4.5 and HB 6.5",
    "HB 4.0 and HA 3.5",
    "HB 6.5 and HA 4.5",
  ]);
});

describe.each(pairs.filter(sharesAll))("$names share key, head and drill", ({ a, b }) => {
  it("are told apart by tap and pitch", () => {
    const wrong = verdictsOf(a, "tap").find(({ instrument }) => instrument === ids(b).tap);
    expect(wrong?.fits).toBe(false);
    expect(wrong?.because.some((reason) => reason.startsWith("diameter "))).toBe(true);
    expect(wrong?.because.some((reason) => reason.startsWith("pitch "))).toBe(true);
  });

  it("are told apart by permission: no chain, and a trap where the thread passes", () => {
    expect(
      derived.chains.filter(({ zone, screw }) => zone === ids(a).zone && screw !== ids(a).screw),
    ).toEqual([]);
    expect(
      derived.screwTraps.some(({ zone, screw }) => zone === ids(a).zone && screw === ids(b).screw),
    ).toBe(b.major <= a.major + 0.1);
  });
});

it.each(pairs.filter((pair) => !sharesAll(pair)))(
  "$names: the other's drill, driver or tap is refused with a reason",
  ({ a, b }) => {
    const refused = (["pilot-drill", "driver", "tap"] as const).flatMap((role) =>
      verdictsOf(a, role).filter(({ instrument, fits }) => instrument === ids(b)[role] && !fits),
    );
    expect(refused.length).toBeGreaterThan(0);
    for (const { because } of refused) expect(because.join()).toMatch(/is asked|does not pass/);
    if (a.pilot !== b.pilot)
      expect(refused.map(({ instrument }) => instrument)).toContain(ids(b)["pilot-drill"]);
  },
);

it("tells the two taps 4.0 apart by pitch alone", () => {
  const [ha, hb] = [rows[4], rows[7]];
  expect(
    verdictsOf(ha, "tap").find(({ instrument }) => instrument === ids(hb).tap)?.because,
  ).toEqual(["pitch 1.75; pitch 1.5 is asked"]);
});

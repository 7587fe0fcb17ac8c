import { expect, it } from "vitest";
import { check } from "../../lib/check/check.ts";
import { rules } from "../../lib/check/rules.ts";
import { editedLibrary } from "../check/edited-library.ts";

/** Screws with a spherical head and HA (shallow) or HB (deep) thread: outer, core, pitch, pilot drill, gliding drill (mm).
 * Outer, core and pitch as remembered from ISO 5835:1991, not read in print. Drills of all rows but HA 5.0 as printed on
 * S. K. Shrestha, "Orthopedic screw insertion", epomedicine.com, 2021; cores of HA 3.5 and HB 6.5, and the drills of both,
 * as printed in Wheeless' Textbook of Orthopaedics, wheelessonline.com. HA 5.0's drill is from memory. */
const rows = [
  {
    type: "HA 1.5",
    class: "cortical",
    major: 1.5,
    core: 1.1,
    pitch: 0.5,
    pilot: 1.1,
    gliding: 1.5,
  },
  {
    type: "HA 2.0",
    class: "cortical",
    major: 2.0,
    core: 1.3,
    pitch: 0.6,
    pilot: 1.5,
    gliding: 2.0,
  },
  {
    type: "HA 2.7",
    class: "cortical",
    major: 2.7,
    core: 1.9,
    pitch: 1.0,
    pilot: 2.0,
    gliding: 2.7,
  },
  {
    type: "HA 3.5",
    class: "cortical",
    major: 3.5,
    core: 2.4,
    pitch: 1.25,
    pilot: 2.5,
    gliding: 3.5,
  },
  {
    type: "HA 4.0",
    class: "cortical",
    major: 4.0,
    core: 2.9,
    pitch: 1.5,
    pilot: 2.9,
    gliding: 4.0,
  },
  {
    type: "HA 4.5",
    class: "cortical",
    major: 4.5,
    core: 3.0,
    pitch: 1.75,
    pilot: 3.2,
    gliding: 4.5,
  },
  {
    type: "HA 5.0",
    class: "cortical",
    major: 5.0,
    core: 3.5,
    pitch: 1.75,
    pilot: 3.5,
    gliding: 5.0,
  },
  { type: "HB 4.0", class: "cancellous", major: 4.0, core: 1.9, pitch: 1.75, pilot: 2.5 },
  {
    type: "HB 6.5",
    class: "cancellous",
    major: 6.5,
    core: 3.0,
    pitch: 2.75,
    pilot: 3.2,
    gliding: 4.5,
    shaft: 4.5,
  },
] as const;

const judged = rules.filter(
  ({ id }) => id === "pilot-suits-the-core" || id === "gliding-hole-comes-first",
);
const none = {
  chains: [],
  gaps: [],
  screwTraps: [],
  drillTraps: [],
  lengthTables: new Map(),
  lookAlikes: [],
  doubleNumbers: [],
  soundAlikes: new Map(),
  plates: [],
};

function said(
  { type, ...facts }: (typeof rows)[number],
  pilot: number = facts.pilot,
): readonly (readonly [string, string])[] {
  const edits = Object.entries({
    ...facts,
    pilot,
    gliding: "gliding" in facts ? facts.gliding : undefined,
  }).map(([key, value]) => ({ file: "screw/cortical-35", path: [key], value }));
  const thread = {
    file: "screw/cortical-35",
    path: ["thread"],
    value: "shaft" in facts ? { extent: "partial", length: 32 } : { extent: "full" },
  };
  const catalogue = editedLibrary([...edits, thread]);
  return check({ catalogue, derived: none, today: "2026-10-02" }, judged).map(
    ({ severity, rule }) => [severity, `${rule} (${type})`],
  );
}

it.each(rows)("$type passes with its own drills, pilot $pilot", (row) => {
  expect(said(row)).toEqual([]);
});

it.each(rows.filter(({ type }) => type !== "HA 5.0"))(
  "$type with a drill 0.1 mm larger is noted, for teaching pages list $pilot",
  (row) => {
    expect(said(row, Math.round(row.pilot * 10 + 1) / 10)).toEqual([
      ["note", `pilot-suits-the-core (${row.type})`],
    ]);
  },
);

it("has no note for HA 5.0, whose drill no public page repeats", () => {
  const row = rows.find(({ type }) => type === "HA 5.0");
  expect(row && said(row, 3.6)).toEqual([]);
});

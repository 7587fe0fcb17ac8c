import { describe, expect, test } from "vitest";
import { resolve } from "../../lib/resolve/resolve.ts";
import { validate } from "../../lib/validate/validate.ts";
import { type Change, smallLibrary } from "./small-library.ts";

function resolved(change?: Change) {
  const { definitions, findings } = validate(smallLibrary(change));
  expect(findings).toEqual([]);
  return resolve(definitions);
}

test("a library that holds together gives its catalogue in id order", () => {
  const { catalogue, findings } = resolved();
  expect(findings).toEqual([]);
  expect([...(catalogue?.plates.keys() ?? [])]).toEqual(["bar-left", "bar-right"]);
  expect(catalogue?.screws.get("locking-35")?.core).toBe(2900);
  expect(catalogue?.cases.size).toBe(1);
});

describe("every id that is named must be there", () => {
  test.each<readonly [string, ...Change, string]>([
    [
      "a permitted screw",
      "zone/threaded-35",
      ["permits", 0],
      "locking-53",
      'Unknown screw "locking-53"',
    ],
    [
      "a head thread of a hole",
      "zone/threaded-35",
      ["thread"],
      "th-53",
      'Unknown head thread "th-53"',
    ],
    [
      "a head thread of a screw",
      "screw/locking-35",
      ["head", "thread"],
      "th-53",
      'Unknown head thread "th-53"',
    ],
    ["a drive", "screw/locking-35", ["drive"], "hexalobular-25", 'Unknown drive "hexalobular-25"'],
    ["a coupling", "instrument/drill-28", ["coupling"], "smal", 'Unknown coupling "smal"'],
    ["a zone of an opening", "opening/wire", ["zones", 0], "wire-51", 'Unknown zone "wire-51"'],
    [
      "an opening of a row",
      "plate/bar-left",
      ["row", "opening"],
      "thread",
      'Unknown opening "thread"',
    ],
    [
      "an opening of a hole",
      "plate/bar-left",
      ["holes", 0, "opening"],
      "wires",
      'Unknown opening "wires"',
    ],
    [
      "a mirrored plate's other",
      "plate/bar-right",
      ["mirror_of"],
      "bar-lef",
      'Unknown plate "bar-lef"',
    ],
    [
      "an instrument of a slot",
      "tray/small",
      ["slots", 0, "instrument"],
      "drill-82",
      'Unknown instrument "drill-82"',
    ],
    [
      "a screw of a rack",
      "tray/small",
      ["slots", 1, "screw"],
      "locking",
      'Unknown screw "locking"',
    ],
    ["a plate of a slot", "tray/small", ["slots", 2, "plate"], "bar", 'Unknown plate "bar"'],
    [
      "a document of a system",
      "system/minnow",
      ["documents", 0],
      "ifus",
      'Unknown document "ifus"',
    ],
    [
      "a document of a source",
      "caution/hand-finish",
      ["source", "document"],
      "ifus",
      'Unknown document "ifus"',
    ],
    [
      "a document of one field",
      "caution/hand-finish",
      ["source", "fields"],
      { text: { document: "old", section: "1" } },
      'Unknown document "old"',
    ],
    [
      "a caution of a step",
      "recipe/locking",
      ["steps", 0, "cautions", 0],
      "hand",
      'Unknown caution "hand"',
    ],
    [
      "a required caution",
      "recipe/locking",
      ["required_cautions", 0],
      "hand",
      'Unknown caution "hand"',
    ],
    [
      "a family of a procedure",
      "procedure/bar",
      ["families", 0],
      "bars",
      'Unknown plate family "bars"',
    ],
    [
      "a recipe of a procedure",
      "procedure/bar",
      ["steps", 0, "fills", "recipe"],
      "lock",
      'Unknown recipe "lock"',
    ],
    ["a tray at a site", "site/brook", ["trays", 0, "tray"], "big", 'Unknown tray "big"'],
    [
      "an absent instrument",
      "site/brook",
      ["trays", 0, "absent", 0],
      "drill-82",
      'Unknown instrument "drill-82"',
    ],
    ["a site of a case", "case/case-a", ["site"], "brok", 'Unknown site "brok"'],
    ["a procedure of a case", "case/case-a", ["procedure"], "rod", 'Unknown procedure "rod"'],
    ["a screw of a plan", "case/case-a", ["plan", 0, "screw"], "lock", 'Unknown screw "lock"'],
    ["a hole of a plan", "case/case-a", ["plan", 0, "hole"], "S5", 'Unknown hole "S5"'],
    ["a length variant of a case", "case/case-a", ["holes"], 5, "Unknown length variant 5"],
    [
      "a length variant in a tray",
      "tray/small",
      ["slots", 2, "holes"],
      6,
      "Unknown length variant 6",
    ],
    [
      "a hole between which a plate bends",
      "plate/bar-left",
      ["bend_zones"],
      [{ between: ["S1", "S9"] }],
      'Unknown hole "S9"',
    ],
    ["a hole beside the row", "plate/bar-left", ["holes", 0, "label"], "S2", 'Duplicate hole "S2"'],
    [
      "a zone of another hole",
      "case/case-a",
      ["plan", 0, "zone"],
      "wire-15",
      'Expected a zone of hole S1 (threaded-35), got "wire-15"',
    ],
    [
      "the side of a mirrored plate",
      "plate/bar-right",
      ["side"],
      "left",
      'Expected the other side of "bar-left" (left), got left',
    ],
  ])("%s", (_, definition, path, value, message) => {
    const { findings } = resolved([definition, path, value]);
    expect(findings.map((finding) => finding.message)).toEqual([message]);
    expect(findings[0]?.place.path.slice(0, path.length)).toEqual(
      path.slice(0, findings[0]?.place.path.length),
    );
  });
});

test("a near name is offered with what is known", () => {
  expect(resolved(["zone/threaded-35", ["thread"], "th-53"]).findings[0]?.fix).toBe(
    'Did you mean "th-35"? Known: th-35.',
  );
});

test("a mention of what is not there is taken out, told once, and its file counts as incomplete", () => {
  const { catalogue, findings, incomplete } = resolved([
    "zone/threaded-35",
    ["permits", 0],
    "locking-53",
  ]);
  expect(findings).toHaveLength(1);
  expect(catalogue?.zones.get("threaded-35")).toMatchObject({ permits: [] });
  expect([catalogue?.plates.size, catalogue?.trays.size, catalogue?.cases.size]).toEqual([2, 1, 1]);
  expect([...incomplete]).toEqual(["zones/threaded-35.yaml"]);
});

test("what stands on something that is not there is left out with all that stands on it", () => {
  const { catalogue, incomplete } = resolved(["plate/bar-left", ["row", "opening"], "thread"]);
  expect([catalogue?.plates.size, catalogue?.cases.size, catalogue?.procedures.size]).toEqual([
    0, 0, 0,
  ]);
  expect(catalogue?.trays.get("small")?.slots).toHaveLength(2);
  expect([...incomplete].sort()).toEqual([
    "cases/case-a.yaml",
    "plates/bar-left.yaml",
    "plates/bar-right.yaml",
    "procedures/bar.yaml",
    "trays/small.yaml",
  ]);
});

test("a citation of a document that is not there takes nothing out", () => {
  const { catalogue, incomplete } = resolved([
    "caution/hand-finish",
    ["source", "document"],
    "ifus",
  ]);
  expect([catalogue?.cautions.size, incomplete.size]).toEqual([1, 0]);
});

test("a reference to a definition that was refused is not told again", () => {
  const { definitions } = validate(smallLibrary(["screw/locking-35", ["core"], "2.9 mm"]));
  expect(resolve(definitions).findings).toEqual([]);
});

test("a library without its single files gives no catalogue", () => {
  const { definitions } = validate(
    smallLibrary().filter(({ kind }) => kind !== "publisher" && kind !== "system"),
  );
  const { catalogue, findings } = resolve(definitions);
  expect(catalogue).toBeUndefined();
  expect(findings.map(({ message }) => message)).toEqual([
    'Missing file "publisher.yaml"',
    'Missing file "systems/minnow/system.yaml"',
  ]);
});

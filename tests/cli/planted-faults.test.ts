import { renameSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { ownLibrary, plant, trayleaf } from "./run-cli.ts";

/** A fault, the file it is planted in (text for text), and where and as what it is named. */
const faults = [
  {
    title: "an unknown key",
    file: "systems/gatepost/instruments/tap-45.yaml",
    edits: [["pitch: 1.75", "pitch: 1.75\ncolour: blue"]],
    named:
      'systems/gatepost/instruments/tap-45.yaml:7:1  STOP  Unknown key "colour"  (key-is-known)',
  },
  {
    title: "a wrong unit",
    file: "general/instruments/forceps-pointed.yaml",
    edits: [["length: 180", "length: 18 cm"]],
    named:
      'general/instruments/forceps-pointed.yaml:6:9  STOP  Expected a plain number in mm between 20 and 400, got "18 cm"  (value-has-its-type)',
  },
  {
    title: "a duplicate key",
    file: "glossary/distal.yaml",
    edits: [["instead_of: bottom", "term: bottom"]],
    named:
      'glossary/distal.yaml:3:1  STOP  Duplicate key "term" (first at glossary/distal.yaml:1)  (yaml-keys-are-unique)',
  },
  {
    title: "an alias",
    file: "glossary/proximal.yaml",
    edits: [["instead_of: top", "instead_of: *top"]],
    named:
      'glossary/proximal.yaml:3:13  STOP  Expected the value itself, got the alias "*top"  (yaml-has-no-aliases)',
  },
  {
    title: "an unknown reference",
    file: "sites/brackenhollow-general.yaml",
    edits: [["absent: [sleeve-35]", "absent: [sleeve-53]"]],
    named:
      'sites/brackenhollow-general.yaml:7:14  STOP  Unknown instrument "sleeve-53"  (reference-exists)',
  },
  {
    title: "no candidate",
    file: "systems/pebblefin/screws/cancellous-40.yaml",
    edits: [["drive: hexalobular-20", "drive: hexalobular-30"]],
    named:
      /^systems\/pebblefin\/screws\/cancellous-40\.yaml:\d+:8 {2}STOP {2}Expected one driver for Screw 4\.0 cancellous in .*, got none/m,
  },
  {
    title: "two candidates",
    file: "systems/pebblefin/instruments/drill-27-gliding.yaml",
    edits: [["use: gliding", "use: pilot"]],
    named:
      /^systems\/pebblefin\/screws\/locking-35\.yaml:\d+:8 {2}STOP {2}Expected one pilot drill for Screw 3\.5 locking in .*, got 2: drill-27-gliding, drill-27-pilot/m,
  },
  {
    title: "a missing caution",
    file: "recipes/unicortical-locking.yaml",
    edits: [
      ["required_cautions: [no-power-for-last-turns, ", "required_cautions: ["],
      ["cautions: [no-power-for-last-turns]", "cautions: []"],
    ],
    named:
      /^recipes\/unicortical-locking\.yaml:\d+:20 {2}STOP {2}Missing the caution against power for the last turns/m,
  },
  {
    title: "a wrong side",
    file: "cases/case-a.yaml",
    edits: [["side: left", "side: right"]],
    named:
      /^cases\/case-a\.yaml:3:7 {2}STOP {2}Expected a plate for the RIGHT side, got .* \(LEFT\)/m,
  },
] as const;
const badId =
  'glossary/Far cortex.yaml:1:1  STOP  Expected a file name of a-z, 0-9 and single hyphens, got "Far cortex"  (id-is-its-file-name)';

test("ten faults planted in ten files are all named with line and column in one run", () => {
  const library = ownLibrary();
  for (const { file, edits } of faults)
    for (const [find, put] of edits) plant(library, file, find, put);
  renameSync(join(library, "glossary/far-cortex.yaml"), join(library, "glossary/Far cortex.yaml"));
  const { code, out } = trayleaf(["check", "--library", library]);
  const told = out.replaceAll(`${library}/`, "");
  expect(code).toBe(1);
  const unnamed = [...faults.map(({ named }) => named), badId].filter((named) =>
    typeof named === "string" ? !told.includes(named) : !named.test(told),
  );
  expect(unnamed).toEqual([]);
}, 60_000);

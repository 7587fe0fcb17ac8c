import { copyFileSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { checkLibrary } from "../../lib/index.ts";
import { refuses } from "../../lib/model/finding.ts";
import { ownLibrary, plant } from "../cli/run-cli.ts";

const screws = "systems/pebblefin/screws";
const instruments = "systems/pebblefin/instruments";
const screw = `${screws}/locking-35.yaml`;
type Edit = (library: string) => void;

/** Replaces a text of the screw's file. */
const typed =
  (find: string, put: string): Edit =>
  (library) =>
    plant(library, screw, find, put);
const renamed =
  (to: string): Edit =>
  (library) =>
    renameSync(join(library, screw), join(library, screws, to));
const saved =
  (change: (text: string) => string | Uint8Array): Edit =>
  (library) =>
    writeFileSync(join(library, screw), change(readFileSync(join(library, screw), "utf8")));
const copied =
  (to: string): Edit =>
  (library) =>
    copyFileSync(join(library, instruments, "drill-25.yaml"), join(library, instruments, to));

const slips: readonly (readonly [string, Edit, readonly string[]])[] = [
  [
    "a decimal comma",
    typed("pilot: 2.7", "pilot: 2,7"),
    [`${screw}:13:8 Expected a decimal point, got "2,7"`],
  ],
  [
    "a unit beside the number",
    typed("pilot: 2.7", "pilot: 2.7 mm"),
    [
      `${screw}:13:8 Expected a plain number in mm between 0.7 and 7, got "2.7 mm" | Write 2.7, without quotes or unit: the unit is always mm.`,
    ],
  ],
  [
    "a line too far in",
    typed("pilot: 2.7", "  pilot: 2.7"),
    [
      `${screw}:13:3 Expected this line to begin at column 1, as the one before it does, got column 3`,
    ],
  ],
  [
    "a tab",
    typed("  section: 4.1", "\tsection: 4.1"),
    [`${screw}:22:1 Expected spaces before the first word, got a tab`],
  ],
  [
    "two digits that changed places in a reference",
    typed("thread: th-35", "thread: th-53"),
    [`${screw}:11:32 Unknown head thread "th-53" | Did you mean "th-35" or "th-50"?`],
  ],
  [
    "a reference in capitals",
    typed("thread: th-35", "thread: TH-35"),
    [`${screw}:11:32 Expected an id of a-z, 0-9 and single hyphens, got "TH-35" | Write th-35.`],
  ],
  [
    "a word for true",
    typed("self_tapping: true", "self_tapping: yes"),
    [`${screw}:10:15 Expected true or false, got "yes" | Write true or false, without quotes.`],
  ],
  [
    "curly quotes",
    typed('mark: "3.5"', "mark: \u201c3.5\u201d"),
    [`${screw}:3:7 Expected straight quotes, got "\u201c3.5\u201d"`],
  ],
  [
    "a day the other way round",
    (library) => plant(library, "cases/case-a.yaml", "2026-10-07", "7.10.2026"),
    [
      'cases/case-a.yaml:8:10 Expected a date as YYYY-MM-DD, got "7.10.2026" | Write the year first',
    ],
  ],
  ["an empty file", saved(() => ""), [`${screw}:1:1 Missing content: the file states nothing`]],
  [
    "a file saved in an old encoding",
    saved((text) => Buffer.from(text.replace("locking screw", "Ø locking screw"), "latin1")),
    [`${screw}:1:7 Expected UTF-8 text, got a byte of another encoding`],
  ],
  [
    "another ending",
    renamed("locking-35.yml"),
    [
      `${screws}/locking-35.yml:1:1 Unknown file or folder "locking-35.yml" | Rename it to locking-35.yaml`,
    ],
  ],
  [
    "an ending that an editor added",
    renamed("locking-35.yaml.txt"),
    [
      `${screws}/locking-35.yaml.txt:1:1 Unknown file or folder "locking-35.yaml.txt" | Rename it to locking-35.yaml`,
    ],
  ],
  [
    "a file name in capitals",
    renamed("Locking-35.yaml"),
    [
      `${screws}/Locking-35.yaml:1:1 Expected a file name of a-z, 0-9 and single hyphens, got "Locking-35" | Rename the file to locking-35.yaml.`,
    ],
  ],
  [
    "a copy with a name of the desktop",
    copied("drill-25 - Copy.yaml"),
    [
      `${instruments}/drill-25 - Copy.yaml:1:1 Expected a file name of a-z, 0-9 and single hyphens, got "drill-25 - Copy" | Rename the file to drill-25-copy.yaml.`,
    ],
  ],
  [
    "what an office program leaves behind",
    copied("~$drill-25.docx"),
    [
      `${instruments}/~$drill-25.docx:1:1 Unknown file or folder "~$drill-25.docx" | Take it out of the library: drill-25.yaml lies here already.`,
    ],
  ],
  [
    "a sleeve that is gone",
    (library) => rmSync(join(library, instruments, "sleeve-27.yaml")),
    [
      'systems/pebblefin/trays/small-instruments.yaml:20:73 Unknown instrument "sleeve-27"',
      "systems/pebblefin/zones/threaded-27.yaml:5:11 Expected one sleeve for Screw 2.7 locking in threaded round hole 2.7 by locking-through-sleeve and unicortical-locking, got none",
    ],
  ],
  [
    "a person in a case",
    (library) => plant(library, "cases/case-a.yaml", "Lower fibula,", "Mrs Miller, lower fibula,"),
    ["cases/case-a.yaml:2:7 Expected nothing that points at a person"],
  ],
];

test.each(slips)(
  "%s is told where it is, with the cure, and nothing beside it",
  (_, edit, expected) => {
    const library = ownLibrary();
    edit(library);
    const { findings, locate } = checkLibrary(library, "2026-10-02");
    const told = findings.filter(refuses).map(locate);
    expect(
      told.map(({ place, line, column, message, fix }, index) => {
        const [what = "", cure = ""] = expected[index]?.split(" | ") ?? [];
        const said = `${place.file}:${line}:${column} ${message}`;
        return said.startsWith(what) && fix.startsWith(cure) ? expected[index] : `${said} | ${fix}`;
      }),
    ).toEqual(expected);
  },
);

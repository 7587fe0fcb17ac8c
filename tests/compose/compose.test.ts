import { describe, expect, test } from "vitest";
import { compose } from "../../lib/compose/compose.ts";
import { fingerprinted } from "../../lib/compose/fingerprint.ts";
import type { SheetKind, SheetView } from "../../lib/model/sheet.ts";
import { minnow } from "./minnow.ts";

const sheets = compose(minnow);

function sheet<K extends SheetKind>(kind: K, id: string): Extract<SheetView, { kind: K }> {
  const found = sheets.find(
    (one): one is Extract<SheetView, { kind: K }> => one.kind === kind && one.id === id,
  );
  if (found === undefined)
    throw new Error(`No ${kind} sheet ${id} among ${sheets.map((one) => one.id).join(", ")}`);
  return found;
}

describe("composing", () => {
  test("makes every sheet once in each of its formats", () => {
    expect(sheets.map(({ id, format }) => `${id}.${format.id}`)).toEqual([
      "minnow-pairing-plates.a4-landscape",
      "minnow-pairing-plates.letter-landscape",
      "minnow-pairing-lag.a4-landscape",
      "minnow-pairing-lag.letter-landscape",
      "minnow-lengths.a4-portrait",
      "minnow-lengths.letter-portrait",
      "minnow-plate-bar-2.a5-landscape",
      "minnow-steps-locking-locking-35.a4-portrait",
      "minnow-steps-locking-locking-35.letter-portrait",
      "minnow-steps-neutral-cortical-35.a4-portrait",
      "minnow-steps-neutral-cortical-35.letter-portrait",
      "minnow-steps-compression-cortical-35.a4-portrait",
      "minnow-steps-compression-cortical-35.letter-portrait",
      "minnow-steps-lag-cortical-35.a4-portrait",
      "minnow-steps-lag-cortical-35.letter-portrait",
      "minnow-procedure-straight.a4-portrait",
      "minnow-procedure-straight.letter-portrait",
      "minnow-tray-small.a4-landscape",
      "minnow-tray-small.letter-landscape",
      "minnow-labels-small.a4-portrait",
      "minnow-pocket.a6-landscape",
      "minnow-pocket-front.id-1",
      "minnow-pocket-back.id-1",
      "minnow-poster.a2-landscape",
      "case-a.a4-landscape",
      "case-a.letter-landscape",
      "minnow-pairing-plates-practice.a4-landscape",
      "minnow-pairing-plates-practice.letter-landscape",
      "minnow-pairing-lag-practice.a4-landscape",
      "minnow-pairing-lag-practice.letter-landscape",
      "minnow-plate-bar-2-practice.a5-landscape",
    ]);
  });

  test("gives a square code to every sheet but the two small faces of a pocket card", () => {
    const without = sheets.filter(({ cardCode }) => cardCode === undefined);
    expect(without.map(({ id }) => id)).toEqual(["minnow-pocket-front", "minnow-pocket-back"]);
  });

  test("says the same twice for the same facts", () => {
    expect(compose(minnow)).toEqual(sheets);
  });

  test("gives a pairing row to each distinct chain, holes with the same instruments merged", () => {
    const { rows } = sheet("pairing", "minnow-pairing-plates");
    expect(rows.map(({ called, phrase, chains }) => [called, phrase, chains])).toEqual([
      ["Screw 3.5 locking", "", ["threaded-35--locking-35--locking"]],
      [
        "Screw 3.5 cortical",
        "",
        ["oblong-35--cortical-35--neutral", "plain-35--cortical-35--neutral"],
      ],
      ["Screw 3.5 cortical", "offset, for compression", ["oblong-35--cortical-35--compression"]],
    ]);
  });

  test.each([
    [
      0,
      [
        "sleeve 3.5",
        "drill 2.7 (3 rings)",
        "gauge 10–70",
        "no tap",
        "driver 20",
        "limiter 1.6 N·m (on handle S)",
      ],
    ],
    [
      1,
      [
        "guide 2.5 (centred end)",
        "drill 2.5 (2 rings)",
        "gauge 10–70",
        "tap 3.5 (if asked)",
        "driver 20",
        "by hand (on handle S)",
      ],
    ],
    [
      2,
      [
        "guide 2.5 (offset end)",
        "drill 2.5 (2 rings)",
        "gauge 10–70",
        "tap 3.5 (if asked)",
        "driver 20",
        "by hand (on handle S)",
      ],
    ],
  ])("hands over for pairing row %i in order, saying what there is none of", (row, words) => {
    const cells = sheet("pairing", "minnow-pairing-plates").rows[row]?.cells ?? [];
    expect(
      cells.map(
        ({ noun, number, note }) => `${noun} ${number}`.trim() + (note === "" ? "" : ` (${note})`),
      ),
    ).toEqual(words);
  });

  test("lists on the pairing sheet what goes in and is wrong, a wrong drill in a sleeve first", () => {
    const { lines } = sheet("pairing", "minnow-pairing-plates").traps;
    expect(
      lines.map(({ subject, words }) => `${subject} ${words}`.replaceAll("\u00a0", " ")),
    ).toEqual([
      "Drill 2.5 passes sleeve 3.5, made for drill 2.7.",
      "Screw 3.5 cortical in threaded 3.5: head lodges.",
      "Screw 3.5 locking in plain round 3.5: head lodges.",
    ]);
  });

  test("puts the cautions that the techniques require on the pairing sheet", () => {
    expect(sheet("pairing", "minnow-pairing-plates").cautions.map(({ id }) => id)).toEqual([
      "hand-finish",
      "square-sleeve",
    ]);
  });

  test("joins readings with the same answer and says how far each neighbour of a dead reading is", () => {
    const [locking, cortical] = sheet("lengths", "minnow-lengths").columns;
    expect(locking?.entries).toEqual([
      { reads: "15–16", next: "16", dead: false, words: "" },
      { reads: "51–53", next: "", dead: true, words: "50: 1 to 3 short; 55: 4 to 2 long" },
      { reads: "from 71", next: "", dead: true, words: "longest is 70" },
    ]);
    expect([cortical?.policy, cortical?.entries]).toEqual(["See instructions for use.", []]);
  });

  test("explains the hatching without the numbers of one screw", () => {
    expect(sheet("lengths", "minnow-lengths").deadNote).toBe(
      "Hatched: no screw made for this reading. Ask the surgeon. Short and long count from the reading with its addition.",
    );
  });

  test("says beneath a plate map what each part of its holes takes", () => {
    const { bands, table, sideWords } = sheet("plate-map", "minnow-plate-bar-2");
    expect(
      bands.map(({ region, holes, pairings }) => [
        region,
        holes,
        pairings.map(({ zone, called, hand }) => `${zone}: ${called}: ${hand}`),
      ]),
    ).toEqual([
      [
        "Shaft holes",
        "S1, S2",
        [
          "threaded part: Screw 3.5 locking: sleeve 3.5, drill 2.7, driver 20, limiter 1.6 N·m",
          "plain part: Screw 3.5 cortical: guide 2.5 centred, drill 2.5, driver 20, by hand",
          "plain part: Screw 3.5 cortical, offset, for compression: guide 2.5 offset, the rest the same",
        ],
      ],
    ]);
    expect(table).toEqual([
      {
        label: "S1, S2",
        kind: "combined, threaded part distal",
        takes: "3.5 locking, 3.5 cortical",
      },
    ]);
    expect(sideWords).toBe("No side");
  });

  test("names the thing in hand at each step, and cautions once: at their step", () => {
    const { steps, cautions } = sheet("steps", "minnow-steps-locking-locking-35");
    expect(steps.map(({ verb, inHand, tally }) => [verb, inHand, tally.length])).toEqual([
      ["Turn in the sleeve", "sleeve 3.5", 0],
      ["Drill the pilot hole", "drill 2.7", 0],
      ["Drive the screw", "Screw 3.5 locking + driver 20 + handle S", 0],
      ["Tighten to the limit", "limiter 1.6 N·m", 8],
    ]);
    expect([steps[0]?.cautions.map(({ id }) => id), cautions.map(({ id }) => id)]).toEqual([
      ["square-sleeve"],
      ["hand-finish"],
    ]);
  });

  test("says what a procedure's filling step hands over", () => {
    const { steps } = sheet("steps", "minnow-procedure-straight");
    expect(steps.map(({ inHand, handedWith }) => [inHand, handedWith])).toEqual([
      ["", ""],
      [
        "Screw\u00a03.5\u00a0cortical",
        "guide\u00a02.5\u00a0centred, drill\u00a02.5, driver\u00a020, by\u00a0hand",
      ],
    ]);
  });

  test("counts a rack by its lengths and empty slots", () => {
    const { contents, identity } = sheet("tray", "minnow-tray-small");
    expect(contents.at(-1)).toEqual({
      slot: "B1",
      what: "Screw 3.5 cortical 10–70",
      mark: "3.5",
      quantity: "48",
    });
    expect(identity.trayRevision).toBe("tray revision 7");
  });

  test("keeps a case in its order of work and never takes unknown for present", () => {
    const { rows, pull, missing } = sheet("case", "case-a");
    expect(rows.map(({ order, hole, lengths }) => [order, hole, lengths])).toEqual([
      ["1", "S1 plain part", "14–20"],
      ["2", "S2 threaded part", "surgeon decides"],
    ]);
    expect(pull.filter(({ what }) => /sleeve|gauge|drill 2.5|driver/.test(what))).toEqual([
      { what: "drill 2.5", pieces: "1 of 2", place: "Small tray, A1", status: "in tray" },
      { what: "gauge 10–70", pieces: "1", place: "Small tray, A4", status: "not checked" },
      { what: "driver 20", pieces: "1 of 0", place: "in no tray of this site", status: "missing" },
      { what: "sleeve 3.5", pieces: "1 of 0", place: "Small tray, A3", status: "missing" },
    ]);
    expect(pull.find(({ what }) => what.startsWith("tap"))?.what).toBe("tap 3.5, if asked");
    expect(missing.lines).toContainEqual({
      subject: "Missing: sleeve 3.5",
      words: "(Small tray, A3).",
    });
    expect(missing.lines).toContainEqual({
      subject: "Not checked: gauge 10–70",
      words: "(Small tray, A4).",
    });
  });

  test("fingerprints what a sheet shows, not its identity", () => {
    const view = sheet("pairing", "minnow-pairing-plates");
    expect(view.identity.fingerprint).toMatch(/^[0-9a-f]{8}$/);
    expect(
      fingerprinted({ ...view, identity: { ...view.identity, issue: "issue D" } }).identity
        .fingerprint,
    ).toBe(view.identity.fingerprint);
    expect(fingerprinted({ ...view, title: "Other" }).identity.fingerprint).not.toBe(
      view.identity.fingerprint,
    );
  });
});

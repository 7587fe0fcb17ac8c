import { describe, expect, test } from "vitest";
import { sheetViews } from "../../lib/compose/compose.ts";
import { signedViews } from "../../lib/compose/signed-views.ts";
import type { SignOff } from "../../lib/model/sign-off.ts";
import { demo } from "../fixtures/demo-library.ts";
import { minnow } from "./minnow.ts";

const signOff = (found_in: string): SignOff => ({
  rule: "pilot-suits-the-core",
  found_in,
  at: "pilot",
  finding: "Expected 2.5, got 2.4",
  role: "Design lead",
  reason: "It suits the thread.",
  date: "2026-09-10",
  source: { document: "minnow-ifu", section: "Table 1", status: "stated" },
});
const signedFor = (found_in: string) => ({
  ...minnow,
  catalogue: {
    ...minnow.catalogue,
    signOffs: new Map([
      [
        "it-suits",
        { ...signOff(found_in), id: "it-suits", system: "minnow", file: "sign-offs/it-suits.yaml" },
      ],
    ]),
  },
});
const [screw] = minnow.catalogue.screws.values();
const [plate] = minnow.catalogue.plates.values();
const [one] = minnow.catalogue.cases.values();
const kindsWith = (found_in: string): readonly string[] => [
  ...new Set(
    sheetViews(signedFor(found_in))
      .filter(({ signed }) => signed.length > 0)
      .map(({ kind }) => kind),
  ),
];

describe("a signed finding", () => {
  test("says why, which role and when", () => {
    const sheet = { kind: "case", system: "minnow", shows: [`case/${one?.id}`] } as const;
    expect(signedViews(signedFor(one?.file ?? ""), sheet)).toEqual([
      { id: "it-suits", words: "It suits the thread. Design lead, 2026-09-10." },
    ]);
  });

  test.each([
    ["a screw", screw?.file, ["pairing", "steps"]],
    ["a plate", plate?.file, ["plate-map"]],
    ["a case", one?.file, ["case"]],
    ["a file that no card is made from", "content/elsewhere.yaml", []],
  ])("about %s stands on the cards whose readers it touches", (_what, file, kinds) => {
    expect(kindsWith(file ?? "")).toEqual(kinds);
  });

  test("is named among what its sheet was made from", () => {
    const sheets = sheetViews(signedFor(screw?.file ?? "")).filter(
      ({ signed }) => signed.length > 0,
    );
    expect(sheets.length).toBeGreaterThan(0);
    for (const { shows } of sheets) expect(shows).toContain("sign-off/it-suits");
  });
});

test("A signature under an empty length stands on the case sheets that show its screw, and on no other.", () => {
  const cases = [...demo.catalogue.cases.values()];
  const signed = cases.filter(({ id, plan }) => {
    const chains = demo.derived.chains.filter(({ zone, screw, recipe }) =>
      plan.some((one) => one.zone === zone && one.screw === screw && one.recipe === recipe),
    );
    const shows = [`case/${id}`, ...chains.map((chain) => `chain/${chain.id}`)];
    return signedViews(demo, { kind: "case", system: "pebblefin", shows }).some(
      (one) => one.id === "brackenhollow-cortical-36",
    );
  });
  const showing = cases.filter(({ plan }) => plan.some(({ screw }) => screw === "cortical-35"));
  expect(signed).toEqual(showing);
  expect(signed.length).toBeLessThan(cases.length);
});

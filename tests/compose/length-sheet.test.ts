import { expect, test } from "vitest";
import { sheetViews } from "../../lib/compose/compose.ts";
import { derive } from "../../lib/derive/derive.ts";
import { pictures } from "../../lib/draw/pictures.ts";
import { loadLibrary } from "../../lib/index.ts";

const { catalogue } = loadLibrary("content");
if (!catalogue) throw new Error("The demo library does not resolve");
const sheets = sheetViews({ catalogue, derived: derive(catalogue), pictures, today: "2026-11-25" });

test.each([
  ["pebblefin-lengths", "13/30, 14/40, 15/50, 16/60, 17/70"],
  ["gatepost-lengths", "14/40, 15/50, 16/60, 17/70, 18/80, 19/90"],
])("%s names every reading or length that sounds like another", (id, pairs) => {
  const notes = sheets.flatMap((sheet) =>
    sheet.kind === "lengths" && sheet.id === id ? [sheet.deadNote] : [],
  );
  expect(notes.length).toBeGreaterThan(0);
  for (const note of notes) expect(note).toContain(`Sound alike: ${pairs}: say each figure.`);
});

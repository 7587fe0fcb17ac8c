import { expect, test } from "vitest";
import { demoSheets } from "../fixtures/demo-library.ts";

const sheets = demoSheets();

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

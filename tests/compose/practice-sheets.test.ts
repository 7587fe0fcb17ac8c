import { describe, expect, test } from "vitest";
import { compose } from "../../lib/compose/compose.ts";
import { drawings } from "../../lib/draw/pictures.ts";
import type { PairingView, PlateMapView, SheetView } from "../../lib/model/sheet.ts";
import { renderSheet } from "../../lib/site/render-sheet.ts";
import { minnow } from "./minnow.ts";

const sheets = compose(minnow);
const practice = sheets.filter((sheet) => sheet.practice !== undefined);
const answered = (sheet: SheetView): SheetView => {
  const found = sheets.find(
    ({ id, format }) => id === sheet.practice?.answers && format.id === sheet.format.id,
  );
  if (found === undefined) throw new Error(`No answers to ${sheet.id}`);
  return found;
};
const answersOf = (sheet: PairingView | PlateMapView): readonly string[] =>
  sheet.kind === "pairing"
    ? sheet.rows.flatMap(({ cells }) =>
        cells.map(({ noun, number }) => `${noun}</span> <b class="number">${number}`),
      )
    : [
        ...sheet.bands.flatMap(({ pairings }) => pairings.map(({ hand }) => hand)),
        ...(sheet.everyScrew ? [sheet.everyScrew.replaceAll(" for every screw here.", "")] : []),
        ...sheet.table.map(({ takes }) => takes).filter((takes) => takes !== "none"),
      ];

describe("a practice sheet", () => {
  test("is made of every pairing sheet and of one map of each plate", () => {
    expect(practice.filter(({ kind }) => kind === "pairing")).toHaveLength(
      sheets.filter(({ kind, practice: of }) => kind === "pairing" && of === undefined).length,
    );
    expect(practice.filter(({ kind }) => kind === "plate-map")).toHaveLength(1);
  });

  test.each(practice.map((sheet) => [`${sheet.id}, ${sheet.format.name}`, sheet] as const))(
    "%s asks what its card answers, and gives no answer away",
    (_name, sheet) => {
      const card = answered(sheet);
      if (card.kind !== "pairing" && card.kind !== "plate-map") throw new Error(card.kind);
      const html = renderSheet(sheet);
      const answers = answersOf(card);
      expect(answers.length).toBeGreaterThan(0);
      for (const answer of answers) {
        expect(renderSheet(card)).toContain(answer);
        expect(html).not.toContain(answer);
      }
      expect(html).toContain(`Answers: card ${card.identity.card}.`);
    },
  );

  test("shares no drawing's id with the card that answers it", () => {
    const ids = (sheet: SheetView): readonly string[] =>
      [...renderSheet(sheet).matchAll(/ id="([^"]+)"/g)].map(([, id]) => id ?? "");
    for (const sheet of practice) {
      const card = new Set(ids(answered(sheet)));
      expect(card.size).toBeGreaterThan(0);
      expect(ids(sheet).filter((id) => card.has(id))).toEqual([]);
    }
  });

  test("shows the very map of its card, with every hole named and nothing of what goes in", () => {
    const drawn = compose({ ...minnow, pictures: drawings });
    const map = (sheet: SheetView | undefined): string => {
      if (sheet?.kind !== "plate-map") throw new Error("No plate map");
      return sheet.map.svg.replaceAll(`${sheet.id}-`, "");
    };
    const asks = drawn.find((sheet) => sheet.kind === "plate-map" && sheet.practice !== undefined);
    const card = drawn.find(({ id }) => id === asks?.practice?.answers);
    expect(map(asks)).toBe(map(card));
    expect(map(asks)).toContain('data-label="S1"');
    if (card?.kind !== "plate-map") throw new Error("No plate map");
    for (const answer of answersOf(card)) expect(map(asks)).not.toContain(answer);
  });
});

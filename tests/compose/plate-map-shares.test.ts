import { describe, expect, test } from "vitest";
import { compose } from "../../lib/compose/compose.ts";
import type { Pictures } from "../../lib/model/figure.ts";
import type { PlateMapView } from "../../lib/model/sheet.ts";
import { minnow } from "./minnow.ts";

/** The sheet of the plate's map when its labels need so much height more than the fullest share, and the heights asked for. */
function sheetWhenShort(more: number): { sheet: PlateMapView; asked: readonly number[] } {
  const asked: number[] = [];
  const plateMap: Pictures["plateMap"] = (id, plate, size, shown) => {
    asked.push(size.height);
    const height = Math.max(size.height, (asked[0] ?? 0) + more);
    return minnow.pictures.plateMap(id, plate, { ...size, height }, shown);
  };
  const [sheet] = compose({ ...minnow, pictures: { ...minnow.pictures, plateMap } }).filter(
    (one): one is PlateMapView => one.kind === "plate-map" && one.practice === undefined,
  );
  if (sheet === undefined) throw new Error("No plate map");
  return { sheet, asked };
}

describe("a plate map whose labels need more height", () => {
  test("keeps its table of holes when they need none", () => {
    expect(sheetWhenShort(0).sheet.table.length).toBeGreaterThan(0);
  });

  test("gives the map the height of the table where that is enough", () => {
    const { sheet, asked } = sheetWhenShort(0.5);
    expect(sheet.table).toEqual([]);
    expect(sheet.map.height).toBe(asked[1]);
    expect(asked[1]).toBeGreaterThan((asked[0] ?? 0) + 0.5);
  });

  test("leaves a map that needs more still as high as it is, for the check of the page to find", () => {
    const { sheet, asked } = sheetWhenShort(60);
    expect(sheet.map.height).toBeGreaterThan(Math.max(...asked.slice(0, 2)));
  });
});

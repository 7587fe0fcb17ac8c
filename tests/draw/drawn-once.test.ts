import { expect, test } from "vitest";
import { drawnOnce } from "../../lib/draw/drawn-once.ts";
import { drawings } from "../../lib/draw/pictures.ts";
import type { Pictures } from "../../lib/model/figure.ts";
import { plates } from "./plates.ts";

/** The drawings, and how often one of them was really drawn. */
function counted(): { readonly pictures: Pictures; drawn(): number } {
  let times = 0;
  const plateMap: Pictures["plateMap"] = (...args) => {
    times++;
    return drawings.plateMap(...args);
  };
  return { pictures: drawnOnce({ ...drawings, plateMap }), drawn: () => times };
}

const size = { width: 192, height: 66 };
const [plate, other] = plates;
if (!plate || !other) throw new Error("no plates");

test("the same numbers under another name are drawn once and give what drawing anew gives", () => {
  const { pictures, drawn } = counted();
  for (const id of ["first", "second-map", "m"])
    expect(pictures.plateMap(id, plate, { ...size }, { marked: ["S1"] })).toEqual(
      drawings.plateMap(id, plate, size, { marked: ["S1"] }),
    );
  expect(drawn()).toBe(1);
});

test("another plate, size or mark is drawn anew", () => {
  const { pictures, drawn } = counted();
  const all = [
    pictures.plateMap("m", plate, size),
    pictures.plateMap("m", other, size),
    pictures.plateMap("m", plate, { ...size, height: 70 }),
    pictures.plateMap("m", plate, size, { marked: ["S1"] }),
  ];
  expect(drawn()).toBe(4);
  expect(new Set(all.map(({ svg }) => svg)).size).toBe(4);
});

test("an equal plate read a second time is not drawn again", () => {
  const { pictures, drawn } = counted();
  pictures.plateMap("m", plate, size);
  pictures.plateMap("m", structuredClone(plate), size);
  expect(drawn()).toBe(1);
});

import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, onTestFinished, test } from "vitest";
import { drawnOnce } from "../../lib/draw/drawn-once.ts";
import { keptFigures } from "../../lib/draw/kept-figures.ts";
import { drawings } from "../../lib/draw/pictures.ts";
import type { Pictures } from "../../lib/model/figure.ts";
import type { LaidPlate } from "../../lib/model/laid-plate.ts";
import { plates } from "./plates.ts";

const [first] = plates as unknown as readonly [LaidPlate];
const size = { width: 192, height: 66 };

function ownFile(): string {
  const folder = mkdtempSync(join(tmpdir(), "trayleaf-test-"));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return join(folder, "figures.json");
}

/** A run that draws a map and a bar under a name: both, and how often a map was really drawn. */
function run(file: string, name: string, given: LaidPlate = first) {
  let drawn = 0;
  const plateMap: Pictures["plateMap"] = (...args) => {
    drawn++;
    return drawings.plateMap(...args);
  };
  const store = keptFigures(file);
  const pictures = drawnOnce({ ...drawings, plateMap }, store);
  const figures = [pictures.plateMap(name, given, size), pictures.scaleBar(`${name}-bar`)];
  store.save();
  return { figures, drawn };
}
const anew = (name: string) => [
  drawings.plateMap(name, first, size),
  drawings.scaleBar(`${name}-bar`),
];

test("a second run draws nothing anew and gives the same figures under its own names", () => {
  const file = ownFile();
  expect(run(file, "a")).toEqual({ figures: anew("a"), drawn: 1 });
  expect(run(file, "b")).toEqual({ figures: anew("b"), drawn: 0 });
});

test("a changed fact is drawn anew, and what was kept before stays", () => {
  const file = ownFile();
  run(file, "a");
  expect(run(file, "a", { ...first, name: "Another name" }).drawn).toBe(1);
  expect(run(file, "a").drawn).toBe(0);
});

test.each([
  ["is cut short", (text: string) => text.slice(0, -20)],
  ["has one figure changed", (text: string) => text.replace("stroke", "strike")],
  ["is empty", () => ""],
  ["is something else", () => "{}"],
])("nothing is believed of a file that %s", (_what, spoil) => {
  const file = ownFile();
  run(file, "a");
  writeFileSync(file, spoil(readFileSync(file, "utf8")));
  expect(run(file, "a")).toEqual({ figures: anew("a"), drawn: 1 });
  expect(run(file, "a").drawn).toBe(0);
});

test("a run that draws nothing anew leaves the file alone", () => {
  const file = ownFile();
  run(file, "a");
  const before = readFileSync(file, "utf8");
  keptFigures(file).save();
  run(file, "b");
  expect(readFileSync(file, "utf8")).toBe(before);
  rmSync(file);
  keptFigures(file).save();
  expect(existsSync(file)).toBe(false);
});

test("where the file cannot be written, figures are drawn all the same and nothing is left behind", () => {
  const file = ownFile();
  mkdirSync(file);
  writeFileSync(join(file, "in-the-way"), "");
  expect(run(file, "a")).toEqual({ figures: anew("a"), drawn: 1 });
  const store = keptFigures(file);
  drawnOnce(drawings, store).scaleBar("a");
  expect(() => store.save()).not.toThrow();
  expect(readdirSync(join(file, ".."))).toEqual(["figures.json"]);
});

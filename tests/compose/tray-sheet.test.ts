import { describe, expect, test } from "vitest";
import { sheetViews } from "../../lib/compose/compose.ts";
import { derive } from "../../lib/derive/derive.ts";
import { pictures } from "../../lib/draw/pictures.ts";
import { typeSizes as figureSizes } from "../../lib/draw/tokens.ts";
import { loadLibrary } from "../../lib/index.ts";
import { FormatChoice, formatsOfKind } from "../../lib/model/format.ts";
import { typeFloors } from "../../lib/model/type-sizes.ts";
import { readSvg } from "../draw/read-svg.ts";

const { catalogue } = loadLibrary("content");
if (!catalogue) throw new Error("The demo library does not resolve");
const publisher = {
  ...catalogue.publisher,
  cards: { formats: { ...FormatChoice.parse({}), tray: [...formatsOfKind.tray] } },
};
const everywhere = { ...catalogue, publisher };
const cards = sheetViews({
  catalogue: everywhere,
  derived: derive(everywhere),
  pictures,
  today: "2026-11-25",
}).flatMap((sheet) => (sheet.kind === "tray" ? [sheet] : []));

/** A slot's drawn parts by their class or data, cut out of its map. */
function slotsOf(svg: string): ReadonlyMap<string, string> {
  const starts = [...svg.matchAll(/data-slot="([^"]+)"/g)];
  return new Map(
    starts.map((start, at) => [start[1] ?? "", svg.slice(start.index, starts[at + 1]?.index)]),
  );
}
const turned = (slot: string): boolean => /class="slot-picture"[^>]*rotate/.test(slot);

describe("the map of a demo tray", () => {
  test.each(cards.map((card) => [`${card.id}.${card.format.id}`, card] as const))(
    "%s shows what lies in every slot, the same way as its row's others, at one scale",
    (_key, { map, shows, contents }) => {
      const tray = catalogue.trays.get(shows[0]?.replace("tray/", "") ?? "");
      const slots = slotsOf(map.svg);
      expect([...slots.keys()].sort()).toEqual(contents.map(({ slot }) => slot).sort());
      const bare = [...slots].filter(([, drawn]) => !drawn.includes('class="slot-picture"'));
      expect(bare.map(([slot]) => slot)).toEqual([]);
      for (const one of tray?.slots ?? [])
        for (const other of tray?.slots ?? [])
          if (one.at[1] === other.at[1])
            expect(turned(slots.get(one.slot) ?? "")).toBe(turned(slots.get(other.slot) ?? ""));
      const scales = readSvg(map.svg).flatMap(({ attributes }) => attributes["data-scale"] ?? []);
      expect(new Set(scales).size).toBe(1);
    },
  );

  test.each(cards.map((card) => [`${card.id}.${card.format.id}`, card] as const))(
    "%s sets what is called out no smaller than words at its distance, and nothing below the least size",
    (_key, { map, contents, format }) => {
      const marks = new Set(contents.map(({ mark }) => mark));
      const set = [...map.svg.matchAll(/font-size="([\d.]+)" font-weight="(\d+)"[^>]*>([^<]*)</g)];
      expect(set.length).toBeGreaterThan(contents.length);
      const sizes = set.map(([, size]) => Number(size));
      expect(Math.min(...sizes)).toBeGreaterThanOrEqual(figureSizes.small);
      const called = set.flatMap(([, size, , text = ""]) => (marks.has(text) ? Number(size) : []));
      expect(called.length).toBeGreaterThanOrEqual(contents.length);
      expect(Math.max(...called)).toBeGreaterThanOrEqual(typeFloors("tray", format).body);
    },
  );
});

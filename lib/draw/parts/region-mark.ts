import type { Pen } from "../canvas.ts";
import { mapLetters } from "../layout/map-letters.ts";
import type { RegionMark } from "../layout/region-forms.ts";

/** Where the baseline of a note stands below the middle of its row, mm. */
export const noteDrop = mapLetters.note * 0.33;

/** The line along a region of a plate with the region's name. */
export function regionMark(pen: Pen, { region, text, words, lines }: RegionMark): void {
  for (const line of lines) pen.line(...line, { data: { span: region } });
  pen.words([(words.x0 + words.x1) / 2, (words.y0 + words.y1) / 2 + noteDrop], text, {
    size: mapLetters.note,
    weight: 600,
    anchor: "middle",
    data: { word: "region", region },
  });
}

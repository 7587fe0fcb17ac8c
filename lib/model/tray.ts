import { z } from "zod";
import { count, kilograms, millimetres } from "./measure.ts";
import { Source } from "./source.ts";
import { line, slug } from "./text.ts";

const place = {
  slot: z
    .string()
    .regex(/^[A-Z][0-9]{1,2}$/)
    .describe("Slot name as marked in the tray"),
  at: z.tuple([count(0, 60, "Column"), count(0, 60, "Row")]).describe("Upper-left cell"),
  span: z.tuple([count(1, 60, "Columns"), count(1, 60, "Rows")]).default([1, 1]),
};

/** One slot: an instrument, a rack of one screw in all its lengths, or a plate in one length variant. */
const Slot = z.discriminatedUnion("holds", [
  z.strictObject({
    holds: z.literal("instrument"),
    ...place,
    instrument: slug,
    quantity: count(1, 40, "Pieces"),
  }),
  z.strictObject({
    holds: z.literal("rack"),
    ...place,
    screw: slug,
    quantity: count(1, 40, "Pieces of each length"),
    except: z
      .array(
        z.strictObject({
          length: millimetres(4, 150, "Screw length"),
          quantity: count(0, 40, "Pieces"),
        }),
      )
      .max(60)
      .default([]),
  }),
  z.strictObject({
    holds: z.literal("plate"),
    ...place,
    plate: slug,
    holes: count(1, 30, "Length variant"),
    quantity: count(1, 20, "Pieces"),
  }),
]);

/** A tray as the maker packs it: a grid of cells with what lies in each slot. */
export const Tray = z.strictObject({
  name: line,
  mark: line,
  revision: line,
  grid: z.strictObject({ columns: count(1, 60, "Columns"), rows: count(1, 60, "Rows") }),
  size: z.strictObject({
    width: millimetres(80, 600, "Inner width"),
    height: millimetres(40, 400, "Inner height"),
  }),
  weight: kilograms(0.1, 40, "Weight of the packed tray").optional(),
  slots: z.array(Slot).min(1).max(120),
  total: count(1, 2000, "Pieces in the tray, as its list states"),
  source: Source.optional(),
});
export type Tray = z.output<typeof Tray>;
export type Slot = Tray["slots"][number];

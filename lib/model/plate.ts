import { z } from "zod";
import { count, millimetres } from "./measure.ts";
import { Source } from "./source.ts";
import { line, mark, sentence, slug } from "./text.ts";

const x = millimetres(-30, 400, "Along the plate from the anchor");
const y = millimetres(-40, 40, "Across the plate");
const point = z.tuple([x, y]);

/** A node of the closed outline; `from: end` measures x from the far end, so length variants stretch. */
const OutlineNode = z.strictObject({
  from: z.enum(["start", "end"]).default("start"),
  at: point,
  curve: z
    .tuple([point, point])
    .optional()
    .describe(
      "Control points of the cubic that arrives here: first in the frame of the node before",
    ),
});

const end = z.enum(["proximal", "distal"]);

/** A hole placed by hand, in plate coordinates. */
const PlacedHole = z.strictObject({
  label: z.string().regex(/^[A-Z][0-9]{1,2}$/),
  opening: slug,
  from: z.enum(["start", "end"]).default("start"),
  at: point,
  region: z.enum(["head", "shaft"]),
  threaded_end: end.optional(),
});

/** A row of equal holes whose number is the length variant. */
const HoleRow = z.strictObject({
  prefix: z.string().regex(/^[A-Z]$/),
  opening: slug,
  first: point,
  pitch: millimetres(4, 60, "Distance between neighbours"),
  region: z.enum(["head", "shaft"]),
  threaded_end: z.enum(["proximal", "distal", "away-from-middle", "towards-middle"]).optional(),
  exceptions: z.record(z.string().regex(/^[A-Z][0-9]{1,2}$/), end).optional(),
});

/** A plate lying along x (mm), start at the left; the row's length variant sets where the end is. */
const Drawn = z.strictObject({
  name: line,
  mark,
  family: slug.describe("Plates of one family share an outline"),
  side: z.enum(["left", "right", "none"]),
  stiffness: z.enum(["stiff", "malleable", "thin-shell"]),
  thickness: z.strictObject({
    head: millimetres(0.3, 12, "Head thickness").optional(),
    shaft: millimetres(0.3, 12, "Shaft thickness"),
  }),
  variants: z
    .array(
      z.strictObject({
        holes: count(1, 30, "Holes in the row"),
        length: millimetres(15, 400, "Overall length"),
      }),
    )
    .min(1)
    .max(16),
  proximal: z.enum(["start", "end"]).describe("Which end lies towards the body"),
  end_cue: line.describe('How the end towards the body is known: "the narrow end"'),
  up_face: sentence.describe("Which face lies up, away from the bone"),
  outline: z.array(OutlineNode).min(3).max(60),
  tail: millimetres(1, 40, "From the last hole of the row to the far end"),
  row: HoleRow,
  holes: z.array(PlacedHole).max(30).default([]),
  schedule: z
    .array(
      z.strictObject({
        opening: slug,
        holes: count(1, 30, "Holes of this kind, beside those of the row").optional(),
      }),
    )
    .max(12)
    .optional()
    .describe("The drawing's hole schedule: each kind of hole, counted; no count for the row's"),
  hooks: z
    .strictObject({
      count: count(1, 4, "Hooks"),
      depth: millimetres(1, 15, "Hook depth"),
      spread: millimetres(1, 30, "Between the outer hooks"),
      engages: sentence,
      at: z.enum(["start", "end"]),
    })
    .optional(),
  bend_zones: z
    .array(z.strictObject({ between: z.tuple([z.string(), z.string()]) }))
    .max(30)
    .default([]),
  source: Source.optional(),
});

/** The other side of a plate: everything is the mirrored plate's, y reversed. */
const Mirrored = z.strictObject({
  name: line,
  mark,
  side: z.enum(["left", "right"]),
  mirror_of: slug,
  source: Source.optional(),
});

export const Plate = z.union([Drawn, Mirrored]);
export type DrawnPlate = z.output<typeof Drawn>;
export type MirroredPlate = z.output<typeof Mirrored>;
export type Plate = z.output<typeof Plate>;

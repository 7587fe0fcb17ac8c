import { z } from "zod";
import { FormatChoice } from "./format.ts";
import { millimetres } from "./measure.ts";
import { Source } from "./source.ts";
import { line, sentence, slug } from "./text.ts";

/** How a maker turns a gauge reading into the next rack length; cited, never defaulted. */
const LengthPolicy = z.strictObject({
  add: millimetres(0, 10, "Allowance added to the reading"),
  overshoot_below: millimetres(0.5, 10, "Overshoot tolerated, exclusive"),
  datum: z.enum(["screw-length", "bare-depth"]).describe("What the gauge reading stands for"),
  source: Source.optional(),
});
export type LengthPolicy = z.output<typeof LengthPolicy>;

/** A plating system of one maker and one generation. */
export const System = z.strictObject({
  name: line,
  maker: line,
  generation: z.number().int().min(1).max(20),
  generation_mark: sentence.describe("How the generation shows on the metal"),
  sizes: line.describe("The screw sizes in words"),
  units: z.strictObject({ length: z.literal("mm"), torque: z.literal("N·m") }),
  documents: z.array(slug).min(1),
  tray_revision: line,
  cards: z.strictObject({
    prefix: z
      .string()
      .regex(/^[A-Z0-9]+(-[A-Z0-9]+)*$/)
      .max(16),
    issue: z.string().regex(/^[A-Z]$/),
    date: z.iso.date(),
    review_by: z.iso.date(),
    formats: FormatChoice.optional(),
  }),
  length_policy: z
    .strictObject({ locking: LengthPolicy.optional(), plain_head: LengthPolicy.optional() })
    .default({}),
  source: Source.optional(),
});
export type System = z.output<typeof System>;

import { z } from "zod";
import { count, kilograms, millimetres } from "./measure.ts";
import { Source } from "./source.ts";
import { line, sentence, slug } from "./text.ts";

/** A tray as it stands at one hospital: what was seen, what is absent, what nobody checked. */
const TrayInstance = z.strictObject({
  tray: slug,
  generation_seen: count(1, 20, "Generation seen on the metal"),
  revision_seen: line,
  checked: z.strictObject({ date: z.iso.date(), role: line }),
  absent: z.array(slug).max(60).default([]).describe("Instruments not there"),
  not_checked: z.array(slug).max(60).default([]).describe("Instruments nobody has looked for"),
  empty_lengths: z
    .array(z.strictObject({ screw: slug, length: millimetres(4, 150, "Screw length") }))
    .default([]),
  limiter_due: z.iso.date().optional(),
});

/** A hospital that holds trays. No person is named. */
export const Site = z.strictObject({
  name: line,
  lift_limit: kilograms(1, 40, "Heaviest tray this hospital lifts").optional(),
  trays: z.array(TrayInstance).min(1).max(20),
  source: Source.optional(),
});
export type Site = z.output<typeof Site>;

/** One planned case: holes and screws, no person. */
export const Case = z.strictObject({
  code: z.string().regex(/^CASE-[A-Z0-9]{1,8}$/),
  name: line,
  side: z.enum(["left", "right"]),
  plate: slug,
  holes: count(1, 30, "Length variant of the plate"),
  site: slug,
  prepared: z.iso.date(),
  expires: z.iso.date(),
  procedure: slug.optional(),
  plan: z
    .array(
      z.strictObject({
        hole: z.string().regex(/^[A-Z][0-9]{1,2}$/),
        zone: slug,
        screw: slug,
        recipe: slug,
        order: count(1, 40, "Order of work"),
        lengths: z
          .tuple([
            millimetres(4, 150, "Shortest expected"),
            millimetres(4, 150, "Longest expected"),
          ])
          .optional(),
      }),
    )
    .min(1)
    .max(30),
  note: sentence.optional(),
  source: Source.optional(),
});
export type Case = z.output<typeof Case>;

/** Whether a case has expired by a day (ISO 8601); its last day still counts. */
export const isOver = ({ expires }: Pick<Case, "expires">, today: string): boolean =>
  expires < today;

/** A word of the trade, for the glossary page. */
export const Term = z.strictObject({ term: line, means: sentence, instead_of: line.optional() });
export type Term = z.output<typeof Term>;

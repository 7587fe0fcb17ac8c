import { z } from "zod";
import { degrees, millimetres } from "./measure.ts";
import { Source } from "./source.ts";
import { line, slug } from "./text.ts";

const common = {
  name: line.describe('Spoken name, e.g. "threaded part 3.5"'),
  through: millimetres(0.5, 12, "Narrowest width a screw passes"),
  source: Source.optional(),
};
const permits = z.array(slug).max(12).describe("Screws the instructions for use permit here");
const plain = {
  ...common,
  seat: millimetres(1.5, 16, "Largest head the seat takes"),
  seat_form: z.enum(["spherical", "conical"]),
  permits,
};

/** One zone of a hole: the threaded or plain part a screw goes through. */
export const Zone = z.discriminatedUnion("kind", [
  z.strictObject({
    kind: z.literal("threaded"),
    ...common,
    thread: slug.describe("Head-thread id of the registry"),
    cone: degrees(0, 30, "Allowed tilt either way; 0 is a fixed axis").optional(),
    permits,
  }),
  z.strictObject({ kind: z.literal("plain-round"), ...plain }),
  z.strictObject({
    kind: z.literal("plain-oblong"),
    ...plain,
    slot: millimetres(1, 20, "Length of the slot"),
    travel: millimetres(0, 4, "Shift of the plate from the loaded position"),
  }),
  z.strictObject({ kind: z.literal("wire"), ...common }),
  z.strictObject({ kind: z.literal("suture"), ...common }),
]);
export type Zone = z.output<typeof Zone>;
export type ZoneKind = Zone["kind"];

/** A hole as it is cut: one zone, or a combined opening of a threaded and a plain zone. */
export const Opening = z.strictObject({
  name: line,
  zones: z.array(slug).min(1).max(2),
  apart: millimetres(1, 12, "Distance between the two zones' centres").optional(),
  source: Source.optional(),
});
export type Opening = z.output<typeof Opening>;
/** How an opening is drawn and named: its zone's kind, or combined. */
export type OpeningKind = ZoneKind | "combined";

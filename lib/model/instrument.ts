import { z } from "zod";
import { Gtin } from "./gtin.ts";
import { count, millimetres, newtonMetres } from "./measure.ts";
import { Source } from "./source.ts";
import { line, mark, sentence, slug } from "./text.ts";

const common = {
  name: line.describe('As spoken, noun first: "drill 2.5"'),
  mark,
  gtin: Gtin.optional(),
  note: sentence.optional(),
  source: Source.optional(),
};
const coupling = slug.describe("Coupling id of the registry");
const overall = millimetres(20, 400, "Overall length");
const bore = millimetres(0.7, 12, "Bore");

const GuideEnd = z.strictObject({
  name: z.enum(["centred", "offset", "free"]),
  foot: millimetres(1, 14, "Outer width of the foot"),
  offset: millimetres(0, 3, "How far the bore stands off the foot's middle").optional(),
  says: line.optional().describe("What is marked or said at this end"),
});
export type GuideEnd = z.output<typeof GuideEnd>;

/** An instrument of a tray, told apart by its kind. */
export const Instrument = z.discriminatedUnion("kind", [
  z.strictObject({
    kind: z.literal("drill"),
    ...common,
    diameter: millimetres(0.7, 8, "Drill diameter"),
    use: z.enum(["pilot", "gliding"]).describe("What this drill is for"),
    length: overall,
    reach: millimetres(10, 350, "From tip to coupling or stop"),
    coupling,
    bands: count(0, 8, "Rings ground on the shank").optional(),
    marks_for_sleeve_length: millimetres(10, 120, "Sleeve its depth marks allow for").optional(),
  }),
  z.strictObject({
    kind: z.literal("plain-guide"),
    ...common,
    bore,
    length: millimetres(10, 150, "Bore length"),
    rests_on: z.enum(["plate-hole", "seat", "bone"]),
    use: z.enum(["pilot", "gliding"]),
    ends: z.array(GuideEnd).min(1).max(3),
  }),
  z.strictObject({
    kind: z.literal("threaded-sleeve"),
    ...common,
    thread: slug.describe("Head-thread id of the registry"),
    bore,
    outer: millimetres(2, 16, "Outer diameter"),
    length: millimetres(10, 120, "Length above the plate"),
  }),
  z.strictObject({
    kind: z.literal("reduction-insert"),
    ...common,
    outer: millimetres(1.5, 12, "Outer diameter"),
    bore,
    length: millimetres(10, 150, "Length"),
  }),
  z.strictObject({
    kind: z.literal("depth-gauge"),
    ...common,
    scale: z.strictObject({
      from: millimetres(0, 150, "Scale start"),
      to: millimetres(10, 200, "Scale end"),
      step: millimetres(0.5, 5, "Scale step"),
    }),
    hook: millimetres(0.5, 6, "Width of the hook"),
    reads: z.enum(["screw-length", "bare-depth"]),
    seat: z.enum(["plate-hole", "bone", "sleeve"]),
    length: overall,
  }),
  z.strictObject({
    kind: z.literal("tap"),
    ...common,
    diameter: millimetres(1, 8, "Outer thread diameter"),
    pitch: millimetres(0.3, 3.5, "Thread pitch"),
    length: overall,
    coupling,
  }),
  z.strictObject({
    kind: z.literal("countersink"),
    ...common,
    pilot: millimetres(0.7, 7, "Pilot tip diameter"),
    head: millimetres(1.5, 14, "Cut diameter"),
    form: z.enum(["spherical", "conical"]),
    length: overall,
    coupling,
  }),
  z.strictObject({
    kind: z.literal("driver-shaft"),
    ...common,
    drive: slug.describe("Drive id of the registry"),
    coupling,
    length: overall,
    holding_sleeve: z.boolean().default(false),
  }),
  z.strictObject({ kind: z.literal("handle"), ...common, coupling, length: overall }),
  z.strictObject({
    kind: z.literal("torque-limiter"),
    ...common,
    torque: newtonMetres(0.2, 8, "Release torque"),
    coupling_in: coupling,
    coupling_out: coupling,
    hand_only: z.literal(true),
    signal: line.describe("How it says it has released"),
    length: overall,
  }),
  z.strictObject({ kind: z.literal("bending-tool"), ...common, purpose: line, length: overall }),
  z.strictObject({
    kind: z.literal("forceps"),
    ...common,
    purpose: line,
    jaws: z
      .enum(["pointed", "flat"])
      .describe("Points that meet, or flat pads that hold a plate between them"),
    length: overall,
  }),
  z.strictObject({
    kind: z.literal("wire"),
    ...common,
    diameter: millimetres(0.6, 4, "Wire diameter"),
    tip: z.enum(["trocar", "blunt"]),
    length: overall,
  }),
  z.strictObject({
    kind: z.literal("removal-kit"),
    ...common,
    drives: z.array(slug).min(1),
    length: overall,
  }),
]);
export type Instrument = z.output<typeof Instrument>;
export type InstrumentKind = Instrument["kind"];
/** The instrument type of one kind. */
export type InstrumentOf<K extends InstrumentKind> = Extract<Instrument, { kind: K }>;

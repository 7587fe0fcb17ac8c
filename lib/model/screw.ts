import { z } from "zod";
import { count, millimetres, newtonMetres } from "./measure.ts";
import { Source } from "./source.ts";
import { line, mark, slug } from "./text.ts";

/** A run of rack lengths: from, from+step … to (mm). */
const Run = z.strictObject({
  from: millimetres(4, 150, "Shortest length"),
  to: millimetres(4, 150, "Longest length"),
  step: millimetres(0.5, 20, "Step"),
});

const Head = z.discriminatedUnion("form", [
  z.strictObject({
    form: z.enum(["spherical", "conical"]),
    diameter: millimetres(1.5, 14, "Head diameter"),
    height: millimetres(0.5, 8, "Head height"),
  }),
  z.strictObject({
    form: z.literal("threaded"),
    thread: slug.describe("Head-thread id of the registry"),
    diameter: millimetres(1.5, 14, "Head diameter"),
    height: millimetres(0.5, 8, "Head height"),
  }),
]);

const Extent = z.discriminatedUnion("extent", [
  z.strictObject({ extent: z.literal("full") }),
  z.strictObject({
    extent: z.literal("partial"),
    length: millimetres(4, 60, "Threaded length from the tip"),
  }),
]);

/** A bone screw. Its partners are found by its numbers, never named. */
export const Screw = z.strictObject({
  name: line.describe('As spoken: "cortical screw 3.5"'),
  called: line.describe('What the surgeon calls out: "Screw 3.5 cortical"'),
  mark,
  class: z.enum(["cortical", "cancellous", "locking"]),
  major: millimetres(1, 8, "Outer thread diameter"),
  core: millimetres(0.7, 7, "Core diameter"),
  shaft: millimetres(0.7, 8, "Unthreaded shaft diameter").optional(),
  pitch: millimetres(0.3, 3.5, "Thread pitch"),
  thread: Extent,
  tip: z.enum(["cutting", "rounded"]).describe("Cutting flutes or a rounded tip"),
  self_tapping: z.boolean(),
  head: Head,
  drive: slug.describe("Drive id of the registry"),
  pilot: millimetres(0.7, 7, "Pilot drill the instructions for use state"),
  gliding: millimetres(1, 8, "Gliding drill the instructions for use state").optional(),
  torque: newtonMetres(0.2, 8, "Torque limit; locking screws only").optional(),
  length_counts_from: z.enum(["head-top", "under-head"]),
  lengths: z.array(Run).min(1).max(6),
  example_length_index: count(0, 80, "Which rack length drawings show").optional(),
  source: Source.optional(),
});
export type Screw = z.output<typeof Screw>;

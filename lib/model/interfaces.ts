import { z } from "zod";
import { millimetres } from "./measure.ts";
import { Source } from "./source.ts";
import { line, slug } from "./text.ts";

/** A nominal head thread: equal ids fit, different ids do not. */
const HeadThread = z.strictObject({ name: line, pitch: millimetres(0.3, 2, "Head-thread pitch") });
/** A screw drive by its published name and number. */
const Drive = z.strictObject({
  name: line.describe("Published name, e.g. hexalobular 10"),
  form: z.enum(["hexalobular", "hexagonal", "square", "cross"]),
  across: millimetres(1, 8, "Outer size of the drive"),
});
/** A coupling between drill and power tool, or shaft, limiter and handle. */
const Coupling = z.strictObject({
  name: line,
  across: millimetres(2, 12, "Width of the coupling"),
});

/** The registry of nouns that parts may share: threads, drives, couplings (interfaces.yaml). */
export const Interfaces = z.strictObject({
  head_threads: z.record(slug, HeadThread),
  drives: z.record(slug, Drive),
  couplings: z.record(slug, Coupling),
  source: Source.optional(),
});
export type Interfaces = z.output<typeof Interfaces>;

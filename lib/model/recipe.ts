import { z } from "zod";
import { Source } from "./source.ts";
import { line, sentence, slug } from "./text.ts";

/** What a hand does in a step; each has a drawing of its own. */
export const verbs = [
  "confirm",
  "hold",
  "seat-hooks",
  "aim-guide",
  "turn-in-sleeve",
  "drill-pilot",
  "drill-gliding",
  "place-insert",
  "take-out",
  "measure",
  "read-marks",
  "tap",
  "countersink",
  "drive-screw",
  "watch-gap",
  "tighten-by-hand",
  "tighten-to-limit",
  "take-out-wires",
  "final-pass",
  "count",
] as const;
export const Verb = z.enum(verbs);
export type Verb = z.output<typeof Verb>;

/** An instrument asked for by what it must be, never by id; the hole and the screw settle the numbers. */
export const Query = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("drill"), use: z.enum(["pilot", "gliding"]) }),
  z.strictObject({
    kind: z.literal("plain-guide"),
    use: z.enum(["pilot", "gliding"]),
    end: z.enum(["centred", "offset", "free"]),
  }),
  z.strictObject({ kind: z.literal("threaded-sleeve") }),
  z.strictObject({ kind: z.literal("reduction-insert") }),
  z.strictObject({ kind: z.literal("depth-gauge") }),
  z.strictObject({ kind: z.literal("tap") }),
  z.strictObject({ kind: z.literal("countersink") }),
  z.strictObject({ kind: z.literal("driver-shaft") }),
  z.strictObject({ kind: z.literal("torque-limiter") }),
  z.strictObject({ kind: z.literal("handle") }),
]);
export type Query = z.output<typeof Query>;

/** What a caution guards against; each has one sentence on a card. */
const dangers = [
  "power-finish",
  "tilted-sleeve",
  "gauge-in-sleeve",
  "locking-first",
  "wrong-mark",
  "worn-drill",
  "wrong-side",
  "unseated-hooks",
  "gliding-through",
  "bent-thread",
  "misheard-length",
  "missed-screw",
  "lost-piece",
  "used-again",
  "unsterile-card",
  "mixed-makers",
] as const;
export type Danger = (typeof dangers)[number];

const stepFields = {
  id: slug,
  verb: Verb,
  say: sentence.describe("The instruction as read aloud; no sizes: the chain supplies them"),
  hands: z.enum(["scrub", "circulating", "surgeon"]).default("scrub"),
  decides: z.literal("surgeon").optional().describe("Marks a point where the surgeon decides"),
  skip: z
    .strictObject({ when: sentence, by: z.enum(["surgeon", "instructions-or-protocol"]) })
    .optional(),
  cautions: z.array(slug).max(6).default([]),
  tally: z.enum(["locking-screws", "wires"]).optional().describe("What is ticked off here"),
};

/** A step of a technique. `optional: tap-if-needed` keeps the chain whole when the tray has no tap. */
export const RecipeStep = z.strictObject({
  ...stepFields,
  uses: Query.optional(),
  also: z.array(Query).max(3).default([]).describe("Instruments joined to the first, in order"),
  near_cortex_only: z
    .boolean()
    .default(false)
    .describe(
      "Drill or tap stops after the near cortex; where neither this nor a decision of the surgeon stands at a drill, it goes through both",
    ),
});
export type RecipeStep = z.output<typeof RecipeStep>;

/** A technique for one screw in one hole, as ordered steps. */
export const Recipe = z.strictObject({
  name: line.describe('"Locking screw through the threaded sleeve"'),
  phrase: line.optional().describe('Added to what is called out: "as lag screw"'),
  zone_kinds: z.array(z.enum(["threaded", "plain-round", "plain-oblong"])).min(1),
  screw_classes: z.array(z.enum(["cortical", "cancellous", "locking"])).min(1),
  needs: z
    .array(z.enum(["travel", "gliding", "partial-thread"]))
    .default([])
    .describe("What hole or screw must have"),
  default: z.boolean().default(true).describe("False: only when the surgeon asks"),
  steps: z.array(RecipeStep).min(1).max(16),
  cautions: z.array(slug).max(9).default([]).describe("Cautions for the whole card"),
  required_cautions: z.array(slug).max(9).default([]),
  source: Source.optional(),
});
export type Recipe = z.output<typeof Recipe>;

/** A step of a procedure: plain, or one that fills holes with one screw by one technique. */
export const ProcedureStep = z.strictObject({
  ...stepFields,
  changes: z
    .array(z.enum(["drill", "guide", "sleeve", "driver", "limiter"]))
    .max(5)
    .default([])
    .describe("What is exchanged here because the next screws are of another size"),
  fills: z
    .strictObject({
      recipe: slug,
      screw: slug,
      zone: slug,
      region: z.enum(["head", "shaft"]),
      repeat: z.enum(["one", "each-planned"]),
    })
    .optional(),
});
export type ProcedureStep = z.output<typeof ProcedureStep>;

/** A whole plate's order of work, for the plates of one or more families. */
export const Procedure = z.strictObject({
  name: line,
  families: z.array(slug).min(1),
  steps: z.array(ProcedureStep).min(1).max(16),
  cautions: z.array(slug).max(9).default([]),
  required_cautions: z.array(slug).max(9).default([]),
  goes_on_with: slug.optional().describe("The order of work that follows on another card"),
  source: Source.optional(),
});
export type Procedure = z.output<typeof Procedure>;

/** A caution: a signal word as published definitions use it, what to do and why. */
export const Caution = z.strictObject({
  signal: z.enum(["WARNING", "CAUTION", "NOTICE"]),
  text: sentence,
  why: sentence,
  against: z.enum(dangers).optional().describe("What it guards against"),
  source: Source.optional(),
});
export type Caution = z.output<typeof Caution>;

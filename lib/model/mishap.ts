import { z } from "zod";
import { count } from "./measure.ts";
import { Source } from "./source.ts";
import { line, sentence } from "./text.ts";

/** Something that does not go to plan, and what is done about it. */
export const Mishap = z.strictObject({
  name: line.describe('What is seen: "The drill breaks"'),
  order: count(1, 40, "Place on the sheet"),
  acts: z.array(sentence).min(1).max(4).describe("What is done, in order, as read aloud"),
  decides: z.literal("surgeon").optional().describe("Marks that the surgeon decides"),
  fetch: z
    .enum(["drill", "removal-kit"])
    .optional()
    .describe("What is fetched; the trays say where it lies"),
  source: Source,
});
export type Mishap = z.output<typeof Mishap>;

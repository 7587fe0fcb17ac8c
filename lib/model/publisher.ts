import { z } from "zod";
import { FormatChoice } from "./format.ts";
import { millimetres } from "./measure.ts";
import { Source } from "./source.ts";
import { line, sentence, slug } from "./text.ts";

/** Who answers questions about a card: a role and a telephone, never a person. */
const Contact = z.strictObject({ role: line, telephone: line });
export type Contact = z.output<typeof Contact>;

/** The team that publishes the cards. One per library (publisher.yaml). */
export const Publisher = z.strictObject({
  name: line,
  logo_text: line.describe("The words that stand in the logo slot"),
  ask: Contact,
  demo: z.boolean().default(false).describe("True puts the invented-data banner on every page"),
  banner: line.optional(),
  defer: sentence.describe("The line that defers to surgeon, instructions for use and protocol"),
  avoid: z
    .array(
      z.strictObject({
        word: line.describe('Words to avoid: "crab"; "heal*" begins a word, "a|b" is either'),
        say: line.describe("The neutral term"),
      }),
    )
    .max(200)
    .default([])
    .describe("The publisher's own words to avoid"),
  cards: z
    .strictObject({
      formats: FormatChoice.optional(),
      duplex_offset: z
        .strictObject({
          right: millimetres(-5, 5, "How far a printer's back must move to the right"),
          up: millimetres(-5, 5, "How far a printer's back must move up"),
        })
        .optional(),
    })
    .optional()
    .describe("How cards are made when a system does not say otherwise"),
  language: z.string().regex(/^[a-z]{2}$/),
  source: Source.optional(),
});
export type Publisher = z.output<typeof Publisher>;

/** A source document, usually a manufacturer's instructions for use. */
export const SourceDocument = z.strictObject({
  title: line,
  kind: z.enum([
    "instructions-for-use",
    "drawing",
    "parts-list",
    "local-protocol",
    "teaching-text",
    "record",
  ]),
  system: slug.optional(),
  issue: line,
  date: z.iso.date(),
  sections: z
    .array(line)
    .min(1)
    .max(400)
    .optional()
    .describe("Its table of contents: every section, table or drawing that is cited"),
  superseded_by: slug.optional(),
});
export type SourceDocument = z.output<typeof SourceDocument>;

import { z } from "zod";
import { Citation } from "./source.ts";
import { line, sentence, slug } from "./text.ts";

/** One signature under one SIGN finding: whose role, why, when, and what they read. The finding is named by rule, file, keys and its exact words, so that a changed number asks for a new signature. */
export const SignOff = z.strictObject({
  rule: slug.describe("Rule whose finding is signed, as printed in brackets behind it"),
  found_in: z
    .string()
    .trim()
    .min(1)
    .max(200)
    .describe("File the finding names, from the library's folder"),
  at: line
    .optional()
    .describe('Keys that lead to the place, joined by dots: "pilot", "steps.2.fills"'),
  finding: z
    .string()
    .trim()
    .min(1)
    .max(600)
    .describe("The finding's words, exactly as printed: a changed number needs a new signature"),
  role: line.describe("Role that signs; never a person's name"),
  reason: sentence.describe(
    "Why it is published as it stands, naming the part: cards that it touches print it",
  ),
  date: z.iso.date().describe("Day of the signature"),
  source: Citation.describe("What the role read"),
});
export type SignOff = z.output<typeof SignOff>;

/** How a SIGN finding is signed, in one sentence for every place that explains rules. */
export const howToSign =
  "Only when it is right as it stands: write sign-offs/<id>.yaml (trayleaf new sign-off <id>) with the finding's rule, place and words, and a role, reason, date and source document. A stop cannot be signed.";

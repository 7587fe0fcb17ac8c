import { z } from "zod";
import { line, slug } from "./text.ts";

/** Where a number was taken from: a registered document and the place in it. */
export const Citation = z.strictObject({
  document: slug.describe("Id of a document of this library"),
  section: line.describe("Section, table or drawing number in that document"),
  status: z
    .enum(["stated", "measured", "agreed"])
    .default("stated")
    .describe("Read in the document, measured on the part, or agreed with whoever wrote it"),
});
export type Citation = z.output<typeof Citation>;

/** A file's source, with an override for single fields that come from elsewhere. */
export const Source = Citation.extend({
  fields: z.record(z.string().max(64), Citation).optional(),
});
export type Source = z.output<typeof Source>;

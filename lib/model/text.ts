import { z } from "zod";

/** An id: lower-case words joined by single hyphens, at most 64 characters; equals its file's name. */
export const slug = z
  .string()
  .max(64)
  .regex(/^[a-z0-9]+(-[a-z0-9]+)*$/)
  .refine(
    (id) => !/^(con|prn|aux|nul|com[0-9]|lpt[0-9])$/.test(id),
    "Expected an id that no computer keeps for a device",
  )
  .meta({ description: "An id: a-z, 0-9 and single hyphens, equal to its file's name" });

/** A text as the id it may be meant as: small letters without accents, all else a hyphen; empty when it holds neither letter nor digit. */
export const asSlug = (text: string): string =>
  text
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-|-$/g, "");

/** One line of text a reader meets on paper. */
export const line = z.string().trim().min(1).max(120);

/** A sentence or two. */
export const sentence = z.string().trim().min(1).max(320);

/** What is etched on the metal, as printed there ("2.0"). */
export const mark = z.string().trim().min(1).max(24).meta({ description: "The mark as etched" });

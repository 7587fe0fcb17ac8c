import { z } from "zod";

const count = z.number().int().min(0);
const severity = z.enum(["stop", "sign", "note"]);

/** Who signed a finding, and out of what. */
const Signed = z.strictObject({
  file: z.string().describe("The sign-off, relative to the library"),
  role: z.string(),
  reason: z.string(),
  date: z.iso.date(),
  source: z.string().describe("Title, issue and section of what was read"),
});

/** One finding as other programs read it. */
const Reported = z.strictObject({
  file: z.string().describe("Relative to the library"),
  line: count.describe("From 1"),
  column: count.describe("From 1"),
  path: z.array(z.union([z.string(), count])).describe("The keys that lead to the place"),
  severity: severity.describe(
    "stop: nothing is published; sign: published when signed; note: told",
  ),
  rule: z.string().describe("What trayleaf explain takes"),
  message: z.string(),
  why: z.string(),
  fix: z.string(),
  frame: z.array(z.string()).describe("The lines around the place, as printed"),
  signed: z.nullable(Signed).describe("Present on a sign finding that a sign-off names"),
});

/** What `trayleaf check --format json` prints; `format` counts up when the shape changes. */
export const CheckReport = z.strictObject({
  format: z.literal(2),
  library: z.string().describe("The folder that was read"),
  counts: z.strictObject({
    stop: count,
    sign: count.describe("Still to be signed"),
    signed: count,
    note: count,
  }),
  closing: z.string().describe("The last line of the printed report"),
  findings: z.array(Reported).describe("By file, line and column"),
});
export type CheckReport = z.output<typeof CheckReport>;

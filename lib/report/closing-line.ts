import type { Finding, Severity } from "../model/finding.ts";

/** How many findings of each severity there are. */
export function countsOf(findings: readonly Finding[]): Readonly<Record<Severity, number>> {
  const count = (severity: Severity): number =>
    findings.filter((finding) => finding.severity === severity).length;
  return { stop: count("stop"), sign: count("sign"), note: count("note") };
}

const some = (count: number, one: string, many: string): string[] =>
  count === 0 ? [] : [`${count} ${count === 1 ? one : many}`];

/** The last line of a check: counts, what follows from them, and never a promise. */
export function closingLine(findings: readonly Finding[]): string {
  const { stop, sign, note } = countsOf(findings);
  const counted = [
    ...some(stop, "stop", "stops"),
    ...some(sign, "to sign", "to sign"),
    ...some(note, "note", "notes"),
  ].join(", ");
  if (stop > 0) return `${counted}. Nothing is published while a stop stands.`;
  if (sign > 0)
    return `${counted}. What is to be signed needs a signature before it is published; not a clinical approval.`;
  if (note > 0) return `${counted}; not a clinical approval.`;
  return "The rules found nothing; not a clinical approval.";
}

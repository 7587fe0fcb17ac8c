import { type Finding, refuses, type Severity } from "../model/finding.ts";

/** How many findings of each severity there are; `sign` counts what still needs a signature, `signed` what has one. */
export function countsOf(
  findings: readonly Finding[],
): Readonly<Record<Severity | "signed", number>> {
  const count = (severity: Severity): number =>
    findings.filter((finding) => finding.severity === severity).length;
  const signed = findings.filter((finding) => finding.severity === "sign" && !refuses(finding));
  return {
    stop: count("stop"),
    sign: count("sign") - signed.length,
    signed: signed.length,
    note: count("note"),
  };
}

const some = (count: number, one: string, many: string): string[] =>
  count === 0 ? [] : [`${count} ${count === 1 ? one : many}`];

/** The last line of a check: counts, what follows from them, how many rules wait for what was refused, and never a promise. */
export function closingLine(findings: readonly Finding[], waiting = 0): string {
  const { stop, sign, signed, note } = countsOf(findings);
  const counted = [
    ...some(stop, "stop", "stops"),
    ...some(sign, "to sign", "to sign"),
    ...some(signed, "signed", "signed"),
    ...some(note, "note", "notes"),
  ].join(", ");
  const wait = some(waiting, "rule may say", "rules may say").map(
    (rules) => ` ${rules} more once what was refused can be read.`,
  );
  if (stop > 0) return `${counted}. Nothing is published while a stop stands.${wait.join("")}`;
  if (sign > 0) return `${counted}. Nothing is published before each is mended or signed.`;
  if (signed + note > 0) return `${counted}; not a clinical approval.`;
  return "The rules found nothing; not a clinical approval.";
}

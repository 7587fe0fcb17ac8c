import pc from "picocolors";
import type { LocatedFinding, Severity } from "../model/finding.ts";
import { howToSign } from "../model/sign-off.ts";
import { closingLine } from "./closing-line.ts";

/** How a report is printed: `library` is the folder as the user named it and stands before each file; `waiting` counts the rules that may say more once what was refused can be read. */
export type TextOptions = {
  readonly library: string;
  readonly colour: boolean;
  readonly waiting?: number;
};

const before = (a: string | number, b: string | number): number => (a < b ? -1 : a > b ? 1 : 0);

/** Findings by file, line, column, rule and message. */
export function inOrder(findings: readonly LocatedFinding[]): LocatedFinding[] {
  return [...findings].sort(
    (a, b) =>
      before(a.place.file, b.place.file) ||
      before(a.line, b.line) ||
      before(a.column, b.column) ||
      before(a.rule, b.rule) ||
      before(a.message, b.message),
  );
}

/** A file may hold characters that steer a terminal; each is shown as one that says it is unknown, a tab as an arrow. */
const visible = (text: string): string =>
  text.replaceAll("\t", "\u2192").replace(/[\p{Cc}\p{Cf}]/gu, "\uFFFD");

/** Who signed a finding, or how it can be: the lines that a sign-off repeats. */
function signingLines({ rule, severity, place, message, signed }: LocatedFinding): string[] {
  if (severity !== "sign") return [];
  if (signed)
    return [`${signed.role}, ${signed.date}: ${signed.reason} (${signed.source}; ${signed.file})`];
  return [
    howToSign,
    `rule: ${rule}`,
    `found_in: ${place.file}`,
    ...(place.path.length > 0 ? [`at: ${place.path.join(".")}`] : []),
    `finding: ${JSON.stringify(message)}`,
  ];
}

/** One finding: place, severity, what, rule; the line; why; what to do; who signed it or how it is signed. */
function findingText(finding: LocatedFinding, { library, colour }: TextOptions): string {
  const paint = pc.createColors(colour);
  const severities: Readonly<Record<Severity, string>> = {
    stop: paint.red("STOP"),
    sign: finding.signed ? paint.green("SIGNED") : paint.yellow("SIGN"),
    note: paint.cyan("NOTE"),
  };
  const { place, line, column, severity, message, rule, frame, why, fix } = finding;
  const file = visible([library, place.file].filter(Boolean).join("/"));
  return [
    `${paint.bold(`${file}:${line}:${column}`)}  ${severities[severity]}  ${visible(message)}  ${paint.dim(`(${rule})`)}`,
    ...frame.map(visible),
    `  ${paint.dim("why")}  ${why}`,
    `  ${paint.dim("fix")}  ${visible(fix)}`,
    ...signingLines(finding).map((text, index) =>
      index === 0 ? `  ${paint.dim("sign")} ${visible(text)}` : `       ${visible(text)}`,
    ),
  ].join("\n");
}

/** All findings in order and the closing line; ends with a line feed. */
export function reportText(findings: readonly LocatedFinding[], options: TextOptions): string {
  return `${[...inOrder(findings).map((finding) => findingText(finding, options)), closingLine(findings, options.waiting)].join("\n\n")}\n`;
}

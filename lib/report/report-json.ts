import type { LocatedFinding } from "../model/finding.ts";
import type { CheckReport } from "../model/report.ts";
import { closingLine, countsOf } from "./closing-line.ts";
import { inOrder } from "./report-text.ts";

/** All findings in order as JSON, in the shape of `CheckReport`. Files are relative to `library`; `waiting` counts the rules that may say more once what was refused can be read. */
export function reportJson(
  findings: readonly LocatedFinding[],
  library: string,
  waiting = 0,
): string {
  const report: CheckReport = {
    format: 2,
    library,
    counts: countsOf(findings),
    closing: closingLine(findings, waiting),
    findings: inOrder(findings).map(
      ({ place, line, column, severity, rule, message, why, fix, frame, signed }) => ({
        file: place.file,
        line,
        column,
        path: [...place.path],
        severity,
        rule,
        message,
        why,
        fix,
        frame: [...frame],
        signed: signed ? { ...signed } : null,
      }),
    ),
  };
  return `${JSON.stringify(report, null, 2)}\n`;
}

import { howToSign } from "../model/sign-off.ts";
import type { ToldRule } from "../model/told-rule.ts";

const width = 88;

function wrapped(label: string, text: string): string {
  const lines: string[] = [];
  let line = label.padEnd(9);
  for (const word of text.split(/\s+/)) {
    if (line.length + 1 + word.length > width && line.trim() !== label.trim()) {
      lines.push(line.trimEnd());
      line = " ".repeat(9);
    }
    line += line.endsWith(" ") ? word : ` ${word}`;
  }
  return [...lines, line.trimEnd()].join("\n");
}

/** Everything there is to say about one rule, as lines of at most 88 characters. */
export function explainRule({
  id,
  severity,
  summary,
  why,
  fix,
  source,
  examples,
}: ToldRule): string {
  const shown = examples.map(({ title, passes, shows }) =>
    wrapped(passes ? "  passes" : "  fails", `${title}: ${shows}`),
  );
  const lines = [
    `${id}  ${severity.toUpperCase()}`,
    "",
    wrapped("what", summary),
    wrapped("why", why),
    wrapped("fix", fix),
    ...(severity === "sign" ? [wrapped("sign", howToSign)] : []),
    wrapped("source", source),
    "examples",
    ...shown,
  ];
  return `${lines.join("\n")}\n`;
}

/** Every rule with its severity and summary, one a line, in id order. */
export function listRules(rules: readonly ToldRule[]): string {
  const sorted = [...rules].sort((a, b) => (a.id < b.id ? -1 : 1));
  const longest = Math.max(0, ...sorted.map(({ id }) => id.length));
  return `${sorted.map(({ id, severity, summary }) => `${id.padEnd(longest)}  ${severity.toUpperCase()}  ${summary}`).join("\n")}\n`;
}

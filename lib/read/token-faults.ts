import type { CST } from "yaml";
import type { ReadingRule } from "./reading-rules.ts";

/** Something reading refuses, at an offset of the text; `stops` when composing would be unsafe. */
export type TextFault = {
  readonly rule: ReadingRule;
  readonly message: string;
  /** In place of the rule's own. */
  readonly fix?: string;
  readonly offset: number;
  readonly end?: number;
  readonly stops?: boolean;
};

const deepest = 32;
const most = 2000;

type Level = { readonly token: CST.Token; readonly depth: number };
const faultOf: Partial<Record<string, readonly [ReadingRule, string]>> = {
  alias: ["aliases", "Expected the value itself, got the alias"],
  anchor: ["aliases", "Expected no anchor, got"],
  tag: ["tags", "Expected no tag, got"],
  directive: ["directives", "Expected no directive, got"],
};

function inside(token: CST.Token, depth: number): Level[] {
  if (token.type === "document")
    return [
      ...(token.start ?? []),
      ...(token.value ? [token.value] : []),
      ...(token.end ?? []),
    ].map((inner) => ({ token: inner, depth }));
  if (token.type === "block-scalar") return token.props.map((inner) => ({ token: inner, depth }));
  if (!("items" in token)) return [];
  const found: Level[] = [];
  for (const item of token.items) {
    for (const inner of item.start) found.push({ token: inner, depth: depth + 1 });
    if (item.key) found.push({ token: item.key, depth: depth + 1 });
    for (const inner of item.sep ?? []) found.push({ token: inner, depth: depth + 1 });
    if (item.value) found.push({ token: item.value, depth: depth + 1 });
  }
  return found;
}

/** What is wrong with the tokens of a file before they are composed: depth, length, aliases, tags, directives, documents. Walks without recursion. */
export function tokenFaults(tokens: readonly CST.Token[]): TextFault[] {
  const faults: TextFault[] = [];
  const documents = tokens.filter(({ type }) => type === "document");
  const second = documents[1];
  if (second)
    faults.push({
      rule: "oneDocument",
      message: `Too many documents: expected 1, got ${documents.length}`,
      offset: second.offset,
    });
  const stack: Level[] = tokens.map((token) => ({ token, depth: 0 }));
  for (let level = stack.pop(); level; level = stack.pop()) {
    const { token, depth } = level;
    if (depth > deepest) {
      return [
        {
          rule: "depth",
          message: `Too many levels: expected at most ${deepest}`,
          offset: token.offset,
          stops: true,
        },
      ];
    }
    if ("items" in token && token.items.length > most) {
      faults.push({
        rule: "many",
        message: `Too many entries: expected at most ${most}, got ${token.items.length}`,
        offset: token.offset,
        stops: true,
      });
      continue;
    }
    const fault = faultOf[token.type];
    const source = "source" in token ? token.source : "";
    if (fault)
      faults.push({
        rule: fault[0],
        message: `${fault[1]} "${source.slice(0, 60)}"`,
        offset: token.offset,
        end: token.offset + source.length,
      });
    for (const inner of inside(token, depth)) stack.push(inner);
  }
  return faults;
}

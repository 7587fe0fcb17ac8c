import {
  type Document,
  isMap,
  isPair,
  isScalar,
  isSeq,
  type LineCounter,
  type Node,
  type ParsedNode,
} from "yaml";
import type { Place } from "../model/finding.ts";

/** One file's text with the tree it was read into: enough to turn a path into a line. */
export type YamlSource = {
  readonly lines: readonly string[];
  readonly counter: LineCounter;
  readonly root?: Document.Parsed["contents"];
};

/** A position and how many characters to underline; line and column count from 1. */
export type Spot = { readonly line: number; readonly column: number; readonly width: number };

type Step = { readonly node: unknown; readonly key?: unknown };

function next(node: unknown, key: string | number): Step | undefined {
  if (isSeq(node))
    return typeof key === "number" && key < node.items.length
      ? { node: node.items[key] }
      : undefined;
  if (!isMap(node)) return undefined;
  const pair = node.items.find(
    (item) => isPair(item) && isScalar(item.key) && String(item.key.value) === String(key),
  );
  return pair ? { node: pair.value, key: pair.key } : undefined;
}

function rangeOf(node: unknown): readonly [number, number] | undefined {
  const range = (node as ParsedNode | Node | null | undefined)?.range;
  return range ? [range[0], range[1]] : undefined;
}

/** Where a place's path leads: the value, or the key when the key is meant or the value is missing or spans lines. */
export function spotOf(
  { lines, counter, root }: YamlSource,
  place: Pick<Place, "path" | "key">,
): Spot {
  let step: Step = { node: root };
  let whole = true;
  for (const key of place.path) {
    const found = next(step.node, key);
    if (!found) {
      whole = false;
      break;
    }
    step = found;
  }
  const value = rangeOf(step.node);
  const several =
    isMap(step.node) || isSeq(step.node) ? !(step.node as { flow?: boolean }).flow : false;
  const useKey =
    step.key !== undefined && (place.key || !whole || !value || value[0] === value[1] || several);
  const range = (useKey ? rangeOf(step.key) : value) ?? [0, 0];
  const { line, col } =
    range[0] === 0 && range[1] === 0 ? { line: 1, col: 1 } : counter.linePos(range[0]);
  const room = (lines[line - 1] ?? "").length - col + 1;
  return {
    line: Math.max(line, 1),
    column: Math.max(col, 1),
    width: Math.max(1, Math.min(range[1] - range[0], room)),
  };
}

/** The offending line with carets beneath, at most 100 characters of it. */
export function frameOf(lines: readonly string[], { line, column, width }: Spot): string[] {
  const text = lines[line - 1];
  if (text === undefined) return [];
  const from = column > 80 ? column - 40 : 0;
  const shown = text.slice(from, from + 100);
  const number = String(line).padStart(4);
  const carets = "^".repeat(Math.max(1, Math.min(width, shown.length - (column - 1 - from))));
  return [
    `${number} | ${shown}`,
    `${" ".repeat(number.length)} | ${" ".repeat(column - 1 - from)}${carets}`,
  ];
}

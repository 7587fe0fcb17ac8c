import type { TextFault } from "./token-faults.ts";

/** One line and the last line before it that is neither empty nor a comment. */
type Here = { readonly line: string; readonly before: string };
/** A slip of the pen: what is wrong, the column it begins at (from 0), and the cure. */
type Slip = { readonly message: string; readonly column: number; readonly fix: string };

const indentOf = (line: string): number => line.length - line.trimStart().length;
/** Where a line may begin that goes on with what another began: at its hyphen, or behind it at its key. */
const goesOnAt = (before: string, line: string): number =>
  /^ *-/.test(line) || !/^ *- +[a-z_]+:/.test(before)
    ? indentOf(before)
    : before.length - before.replace(/^ *- +/, "").length;
const withoutQuoted = (line: string): string =>
  line.replace(/"(?:[^"\\]|\\.)*"|'(?:[^']|'')*'/g, (text) => "_".repeat(text.length));
const count = (line: string, signs: RegExp): number =>
  withoutQuoted(line).match(signs)?.length ?? 0;
const isOpen = (line: string): boolean => count(line, /[[{]/g) > count(line, /[\]}]/g);
/** True when nothing can belong to a line but what stands on it. */
const isWhole = (line: string): boolean =>
  /^ *(- +)?([a-z_]+: +[^|>#]|[[{"'\w])/.test(line) && !/: *$/.test(line) && !isOpen(line);

function tab({ line }: Here): Slip | undefined {
  const column = /^ *\t/.exec(line)?.[0].length;
  return column === undefined
    ? undefined
    : {
        message: "Expected spaces before the first word, got a tab",
        column: column - 1,
        fix: "Replace the tab by as many spaces as the lines beside it have.",
      };
}

function unmerged({ line }: Here): Slip | undefined {
  return /^(<{7}|={7}|>{7})( |$)/.test(line)
    ? {
        message: "Expected one version of the text, got the mark of an unfinished merge",
        column: 0,
        fix: "Keep one of the two versions and delete the lines with the marks <<<<<<<, ======= and >>>>>>>.",
      }
    : undefined;
}

function noSpace({ line }: Here): Slip | undefined {
  const [, start, sign, rest] =
    /^( *(?:- +)?[a-z_]+)(:)([^\s:/].*)$/.exec(line) ?? /^( *)(-)([^\s-].*)$/.exec(line) ?? [];
  if (start === undefined || sign === undefined || rest === undefined) return undefined;
  return {
    message: `Expected a space after the ${sign === ":" ? "colon" : "hyphen"}, got none`,
    column: start.length,
    fix: `Write ${`${start}${sign} ${rest}`.trim()}`,
  };
}

function colonInText({ line }: Here): Slip | undefined {
  const [, start, text] =
    /^( *(?:- +)?[a-z_]+: +)([^"'[{|>&*!#\s][^#]*:(?: .*|))$/.exec(line) ?? [];
  return start === undefined || text === undefined
    ? undefined
    : {
        message: "Expected text that holds a colon in quotes",
        column: start.length,
        fix: `Write ${start.trim()} ${JSON.stringify(text.trim())}`,
      };
}

function unclosed({ line }: Here): Slip | undefined {
  const quote = /(?<=[:[{,-] *)["'](?!.*["'])/.exec(withoutQuoted(line));
  const bracket = isOpen(line) ? /[[{](?!.*[[{])/.exec(withoutQuoted(line)) : null;
  const opened = quote ?? bracket;
  if (opened === null) return undefined;
  const closing = { "[": "]", "{": "}" }[opened[0]] ?? opened[0];
  return {
    message: `Missing closing ${closing}`,
    column: opened.index,
    fix: `Close what begins here with ${closing} on the same line.`,
  };
}

function indented({ line, before }: Here): Slip | undefined {
  const expected = goesOnAt(before, line);
  const got = indentOf(line);
  if (!isWhole(before) || got <= indentOf(before) || got === expected) return undefined;
  return {
    message: `Expected this line to begin at column ${expected + 1}, as the one before it does, got column ${got + 1}`,
    column: got,
    fix: "What belongs together begins at one column; what belongs to a key stands two spaces further in.",
  };
}

const slips = [unmerged, tab, noSpace, colonInText, unclosed, indented] as const;

/** What is wrong with lines on which reading stumbled (numbers from 1), or with a neighbour of such a line, in plain words; empty when it is no common slip. */
export function lineSlips(
  lines: readonly string[],
  stumbled: readonly number[],
  offsetOf: (line: number) => number,
): TextFault[] {
  const near = new Set(stumbled.flatMap((line) => [line - 1, line, line + 1]));
  const last = Math.max(...stumbled);
  let before = "";
  return lines.flatMap((line, index): TextFault[] => {
    if (/^\s*(#|$)/.test(line)) return [];
    const here = { line, before };
    before = line;
    const slip = slips
      .filter((one) => near.has(index + 1) || (one === unclosed && index < last))
      .map((one) => one(here))
      .find((found) => found !== undefined);
    if (slip === undefined) return [];
    const { message, column, fix } = slip;
    return [{ rule: "wellFormed", message, fix, offset: offsetOf(index + 1) + column }];
  });
}

import { Composer, LineCounter, Parser, type YAMLError } from "yaml";
import type { Finding } from "../model/finding.ts";
import { findingOf } from "../model/told-rule.ts";
import { characterFaults } from "./character-faults.ts";
import { decodeText } from "./decode-text.ts";
import { lineSlips } from "./line-slips.ts";
import { PlainData } from "./node-faults.ts";
import { type ReadingRule, readingRules } from "./reading-rules.ts";
import { type TextFault, tokenFaults } from "./token-faults.ts";
import type { YamlSource } from "./yaml-source.ts";

/** A file's plain data, or none and what was refused; never throws. `source` turns paths into lines. */
export type ParsedYaml = {
  readonly data?: unknown;
  readonly findings: Finding[];
  readonly source: YamlSource;
};

const options = {
  version: "1.2",
  schema: "core",
  strict: true,
  uniqueKeys: false,
  stringKeys: true,
  merge: false,
} as const;
const toldElsewhere = new Set([
  "TAG_RESOLVE_FAILED",
  "BAD_ALIAS",
  "BAD_DIRECTIVE",
  "MULTIPLE_DOCS",
  "NON_STRING_KEY",
]);

/** What an ill-formed file is not asked for: its tree is a guess. */
const ofTheTree: ReadonlySet<ReadingRule> = new Set(["keys", "unique", "wellFormed"]);

/** Reads the text of one YAML file under the rules of reading; `file` is only named in findings. */
export function parseYaml(file: string, bytes: Uint8Array): ParsedYaml {
  const decoded = decodeText(bytes);
  const { text } = decoded;
  const counter = new LineCounter();
  const lines = text.split("\n");
  const finding = ({ rule, offset, ...told }: TextFault): Finding => {
    const { line, col } = counter.lineStarts.length
      ? counter.linePos(Math.min(offset, text.length))
      : { line: 1, col: 1 };
    const place = { file, path: [], line: Math.max(1, line), column: Math.max(1, col) };
    return findingOf(readingRules[rule], told, place);
  };
  const refuse = (faults: readonly TextFault[]): ParsedYaml => ({
    findings: faults.map(finding),
    source: { lines, counter },
  });
  counter.lineStarts = [0];
  for (let at = text.indexOf("\n"); at >= 0; at = text.indexOf("\n", at + 1))
    counter.lineStarts.push(at + 1);
  if ("line" in decoded) {
    const offset = (counter.lineStarts[decoded.line - 1] ?? 0) + decoded.column - 1;
    return refuse([
      { rule: "utf8", message: "Expected UTF-8 text, got a byte of another encoding", offset },
    ]);
  }
  const hidden = characterFaults(text).map(
    ({ index, name }): TextFault => ({
      rule: "characters",
      message: `Expected visible characters, got ${name}`,
      offset: index,
    }),
  );
  if (hidden.length > 0) return refuse(hidden.slice(0, 20));
  try {
    return compose();
  } catch (error) {
    return refuse([
      {
        rule: "wellFormed",
        message: `Expected well-formed YAML: ${error instanceof Error ? error.message : String(error)}`,
        offset: 0,
      },
    ]);
  }

  /** The slips behind the problems of a parser, in plain words; where there is no common slip, its first problem, for what follows from that is no fault of its own. */
  function illFormed(problems: readonly YAMLError[]): TextFault[] {
    const [first] = problems;
    if (first === undefined) return [];
    const lineOf = (offset: number): number => counter.linePos(offset).line;
    const slips = lineSlips(
      lines,
      problems.map(({ pos }) => lineOf(pos[0])),
      (line) => counter.lineStarts[line - 1] ?? 0,
    );
    if (slips.length > 0) return slips;
    const message = `Expected well-formed YAML: ${first.message}`;
    return [{ rule: "wellFormed", message, offset: first.pos[0] }];
  }

  function compose(): ParsedYaml {
    const tokens = [...new Parser().parse(text)];
    const faults = tokenFaults(tokens);
    if (faults.some(({ stops }) => stops)) return refuse(faults);
    const [document] = [...new Composer(options).compose(tokens, true, text.length)];
    const problems = document ? [...document.errors, ...document.warnings] : [];
    const illForm = illFormed(problems.filter(({ code }) => !toldElsewhere.has(code)));
    faults.push(...illForm);
    const root = document && "contents" in document ? document.contents : null;
    const plain = new PlainData(file, text, (offset) => counter.linePos(offset).line);
    const data = plain.of(root);
    faults.push(...plain.faults.filter(({ rule }) => illForm.length === 0 || !ofTheTree.has(rule)));
    if (problems.length > 0 && faults.length === 0)
      faults.push({
        rule: "wellFormed",
        message: `Expected well-formed YAML: ${problems[0]?.message}`,
        offset: 0,
      });
    if (faults.length === 0 && data === null)
      faults.push({
        rule: "notEmpty",
        message: "Missing content: the file states nothing",
        offset: 0,
      });
    if (faults.length > 0) return refuse([...faults].sort((a, b) => a.offset - b.offset));
    return { data, findings: [], source: { lines, counter, root: root as YamlSource["root"] } };
  }
}

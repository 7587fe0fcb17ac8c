import { isAlias, isMap, isNode, isScalar, isSeq, type Scalar } from "yaml";
import { characterFaults } from "./character-faults.ts";
import type { TextFault } from "./token-faults.ts";

const longest = 2000;
const plainDecimal = /^-?(0|[1-9][0-9]*)(\.[0-9]{1,4})?$/;
const reserved = new Set(["__proto__", "constructor", "prototype"]);

/** Turns a composed tree (at most 32 deep) into plain data, collecting what is wrong with its keys, numbers and texts. */
export class PlainData {
  readonly faults: TextFault[] = [];
  readonly text: string;
  readonly lineOf: (offset: number) => number;
  readonly file: string;

  constructor(file: string, text: string, lineOf: (offset: number) => number) {
    this.file = file;
    this.text = text;
    this.lineOf = lineOf;
  }

  /** The node as strings, numbers, booleans, null, arrays and objects. */
  of(node: unknown): unknown {
    if (isScalar(node)) return this.scalar(node);
    if (isSeq(node)) return this.list(node.items);
    if (isMap(node)) return this.keys(node.items);
    if (!isAlias(node) && node !== null && node !== undefined)
      this.say("wellFormed", "Expected a value", 0);
    return null;
  }

  private say(rule: TextFault["rule"], message: string, offset: number, end?: number): void {
    this.faults.push({ rule, message, offset, end });
  }

  private list(items: readonly unknown[]): unknown[] {
    items.forEach((item, index) => {
      const before = items[index - 1];
      if (!isScalar(before) || !isScalar(item) || !before.range || !item.range) return;
      const pair = this.text.slice(before.range[0], item.range[1]);
      if (/^-?\d+,\d+$/.test(pair))
        this.say(
          "numbers",
          `Expected a decimal point, or a space after the comma, got "${pair}"`,
          before.range[0],
          item.range[1],
        );
    });
    return items.map((item) => this.of(item));
  }

  private keys(
    items: readonly { readonly key: unknown; readonly value: unknown }[],
  ): Record<string, unknown> {
    const data: Record<string, unknown> = {};
    const first = new Map<string, number>();
    for (const { key, value } of items) {
      const [offset, end] = isNode(key) && key.range ? key.range : [0, 0];
      const name = isScalar(key) ? String(key.value) : "";
      const earlier = first.get(name);
      if (!isScalar(key)) this.say("keys", "Expected a plain word as key", offset, end);
      else if (name === "<<")
        this.say("merge", "Expected the keys themselves, got a merge key", offset, end);
      else if (reserved.has(name)) this.say("keys", `Unknown key "${name}"`, offset, end);
      else if (earlier !== undefined)
        this.say(
          "unique",
          `Duplicate key "${name}" (first at ${this.file}:${this.lineOf(earlier)})`,
          offset,
          end,
        );
      else {
        this.characters(key);
        first.set(name, offset);
        data[name] = this.of(value);
        continue;
      }
      this.of(value);
    }
    return data;
  }

  private scalar(node: Scalar): unknown {
    const { value, source = "", range, type } = node;
    const [offset, end] = range ?? [0, 0];
    if (typeof value === "number" || typeof value === "bigint") {
      if (!plainDecimal.test(source) || /^-0(\.0*)?$/.test(source))
        this.say(
          "numbers",
          `Expected a plain decimal with at most 4 places, got ${source}`,
          offset,
          end,
        );
      return Number(value);
    }
    if (typeof value !== "string") return value;
    if (value.length > longest)
      this.say(
        "many",
        `Too many characters: expected at most ${longest}, got ${value.length}`,
        offset,
        offset + 1,
      );
    if (type === "PLAIN") {
      if (/^-?\d+,\d+$/.test(value))
        this.say("numbers", `Expected a decimal point, got "${value}"`, offset, end);
      if (/^[\u2018-\u201f\u00ab\u2039]/.test(value))
        this.say("quotes", `Expected straight quotes, got "${value.slice(0, 60)}"`, offset, end);
      if (/^[ \t]+#/.test(this.text.slice(end, end + 200)))
        this.say(
          "comments",
          `Expected text in quotes where # follows, got "${value.slice(0, 60)}"`,
          offset,
          end,
        );
    }
    this.characters(node);
    return value;
  }

  /** Hidden characters written as escapes; those written out are found in the text itself. */
  private characters({ value, range, type }: Scalar): void {
    if (type !== "QUOTE_DOUBLE" || typeof value !== "string" || !range) return;
    if (!this.text.slice(range[0], range[1]).includes("\\")) return;
    for (const { name } of characterFaults(value))
      this.say("characters", `Expected visible characters, got ${name}`, range[0], range[1]);
  }
}

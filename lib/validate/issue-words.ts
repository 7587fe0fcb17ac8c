import { z } from "zod";
import { suggestion } from "../model/nearest-name.ts";
import { asSlug } from "../model/text.ts";
import { asNumber, expectedNumber, slips } from "./number-words.ts";
import { keysOf, schemaAt } from "./schema-at.ts";
import type { ValidatingRule } from "./validating-rules.ts";

type Issue = z.core.$ZodIssue;
type Path = readonly (string | number)[];
/** One finding in the making: which rule, what it says, where. */
export type Told = {
  readonly rule: ValidatingRule;
  readonly message: string;
  readonly fix?: string;
  readonly path: Path;
  readonly key?: boolean;
};

const forms: Readonly<Record<string, string>> = {
  "/^[a-z0-9]+(-[a-z0-9]+)*$/": "an id of a-z, 0-9 and single hyphens",
  "/^[A-Z][0-9]{1,2}$/": 'a label of one capital letter and one or two digits, as "A1"',
  "/^[A-Z]$/": "one capital letter",
  "/^[A-Z0-9]+(-[A-Z0-9]+)*$/": "capital letters, digits and single hyphens",
  "/^[a-z]{2}$/": 'a language of two letters, as "en"',
  "/^(\\d{8}|\\d{12,14})$/": "a GTIN of 8, 12, 13 or 14 digits",
  "/^CASE-[A-Z0-9]{1,8}$/": 'a code as "CASE-A1"',
};
const types: Readonly<Record<string, string>> = {
  string: "text",
  boolean: "true or false",
  object: "keys with values",
  record: "keys with values",
  array: "a list",
  tuple: "a list",
  int: "a whole number",
};

/** A value as it is named in a message. */
function got(value: unknown): string {
  if (value === null || value === undefined) return "nothing";
  if (Array.isArray(value)) return `a list of ${value.length}`;
  if (typeof value === "object") return "keys with values";
  return typeof value === "string" ? `"${value.slice(0, 80)}"` : String(value);
}

/** The value at a path of plain data. */
export function valueAt(data: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (at, key) =>
      typeof at === "object" && at !== null ? (at as Record<PropertyKey, unknown>)[key] : undefined,
    data,
  );
}

function choice(kind: string, path: Path, value: unknown, known: readonly string[]): Told {
  const name = String(path.at(-1) ?? "value");
  const what =
    typeof path.at(-1) === "number"
      ? "entry"
      : name === "kind" && path.length === 1
        ? `${kind} kind`
        : name;
  const message =
    known.length === 1
      ? `Expected ${known[0]}, got ${got(value)}`
      : `Unknown ${what} ${typeof value === "string" ? `"${value}"` : got(value)}`;
  return { rule: "choiceKnown", message, fix: suggestion(String(value), known, "words"), path };
}

function size(
  issue: Issue & { code: "too_small" | "too_big" },
  path: Path,
  value: unknown,
  field: z.core.$ZodType | undefined,
): Told {
  const limit =
    issue.code === "too_small" ? `at least ${issue.minimum}` : `at most ${issue.maximum}`;
  if (issue.origin === "array")
    return {
      rule: "count",
      message: `${issue.code === "too_big" ? "Too many entries: expected" : "Expected"} ${limit}, got ${Array.isArray(value) ? value.length : 0}`,
      path,
    };
  if (issue.origin === "string") {
    const text = String(value);
    return text.trim() === ""
      ? { rule: "textLength", message: "Expected some text, got none", path }
      : {
          rule: "textLength",
          message: `Too many characters: expected ${limit}, got ${text.length}`,
          path,
        };
  }
  const slip = slips(Number(value), field);
  return {
    rule: "range",
    message: `Expected ${expectedNumber(field)}, got ${got(value)}`,
    ...(slip ? { fix: slip } : {}),
    path,
  };
}

function type(
  issue: Issue & { code: "invalid_type" },
  path: Path,
  value: unknown,
  field: z.core.$ZodType | undefined,
): Told {
  const numeric = issue.expected === "number" || issue.expected === "int";
  const expected = numeric ? expectedNumber(field) : (types[issue.expected] ?? issue.expected);
  const number = numeric && typeof value === "string" ? asNumber(value, field) : "";
  const text =
    issue.expected === "string" && (typeof value === "number" || typeof value === "boolean")
      ? `Write it in quotes: "${value}".`
      : issue.expected === "boolean"
        ? "Write true or false, without quotes."
        : "";
  return {
    rule: "type",
    message: `Expected ${expected}, got ${got(value)}`,
    ...(number || text ? { fix: number || text } : {}),
    path,
  };
}

/** How to write what has another form than its field: a day with the year first, an id in small letters. Empty when neither is meant. */
function formFix(
  isDate: boolean,
  value: unknown,
  field: z.core.$ZodType | undefined,
): Pick<Told, "fix"> {
  if (isDate)
    return { fix: "Write the year first, then month and day with two digits each, as 2026-10-01." };
  const id = typeof value === "string" ? asSlug(value) : "";
  const fits = field !== undefined && z.safeParse(field, id).success;
  return id !== "" && fits ? { fix: `Write ${id}.` } : {};
}

/** A schema's issue in the house's words; several for unknown keys, none for what is told by another. */
export function issueWords(
  kind: string,
  schema: z.core.$ZodType,
  data: unknown,
  issue: Issue,
): Told[] {
  const path = issue.path.filter((key): key is string | number => typeof key !== "symbol");
  const value = valueAt(data, path);
  const field = schemaAt(schema, path, data);
  const holder = valueAt(data, path.slice(0, -1));
  const absent =
    typeof holder === "object" &&
    holder !== null &&
    !Array.isArray(holder) &&
    !Object.hasOwn(holder, path.at(-1) ?? "");
  if (issue.code !== "unrecognized_keys" && path.length > 0 && absent) {
    const number = field ? expectedNumber(field) : "";
    return [
      {
        rule: "keyPresent",
        message: `Missing key "${path.at(-1)}"`,
        ...(number.includes(" in ") ? { fix: `Add the key: ${number}.` } : {}),
        path,
      },
    ];
  }
  switch (issue.code) {
    case "unrecognized_keys":
      return issue.keys.map((key) => ({
        rule: "keyKnown",
        message: `Unknown key "${key}"`,
        fix: suggestion(key, field ? keysOf(field) : [], "keys"),
        path: [...path, key],
        key: true,
      }));
    case "invalid_value":
      return [choice(kind, path, value, issue.values.map(String))];
    case "invalid_union":
      return [
        choice(
          kind,
          path,
          value,
          "options" in issue && Array.isArray(issue.options) ? issue.options.map(String) : [],
        ),
      ];
    case "too_small":
    case "too_big":
      return [size(issue, path, value, field)];
    case "not_multiple_of":
      return [
        {
          rule: "grain",
          message: `Expected ${expectedNumber(field)}, in steps of ${issue.divisor}, got ${got(value)}`,
          path,
        },
      ];
    case "invalid_type":
      return [type(issue, path, value, field)];
    case "invalid_key":
      return [
        {
          rule: "textForm",
          message: `Expected ${forms["pattern" in (issue.issues[0] ?? {}) ? String((issue.issues[0] as { pattern?: string }).pattern) : ""] ?? "a plain key"}, got ${got(path.at(-1))}`,
          path,
          key: true,
        },
      ];
    case "invalid_format":
      return [
        {
          rule: "textForm",
          ...formFix(issue.format === "date", value, field),
          message: `Expected ${issue.format === "date" ? "a date as YYYY-MM-DD" : (forms[issue.pattern ?? ""] ?? "another form")}, got ${got(value)}`,
          path,
        },
      ];
    default:
      return [
        {
          rule:
            issue.code === "custom" && issue.params?.["rule"] === "checkDigit"
              ? "checkDigit"
              : "textForm",
          message: `${issue.message}, got ${got(value)}`,
          path,
        },
      ];
  }
}

import { z } from "zod";
import { bareSchema } from "../model/bare-schema.ts";
import { type DefinitionKind, definitions } from "../model/definition.ts";

type Schema = z.core.$ZodType;
/** One of each form of text, plainest first; the first that a field takes is written into it. */
const samples = [
  "To be written",
  "to-be-named",
  "A1",
  "A",
  "AA",
  "CASE-A",
  "en",
  "2026-01-01",
  "9520000000127",
];

function described(schema: Schema): string {
  const own = z.globalRegistry.get(schema)?.description;
  if (own !== undefined) return own;
  if (schema instanceof z.ZodOptional || schema instanceof z.ZodDefault)
    return described(schema.def.innerType);
  return schema instanceof z.ZodPipe ? described(schema.def.in) : "";
}

const takes = (schema: Schema, value: unknown): boolean =>
  schema instanceof z.ZodType && schema.safeParse(value).success;
const scalar = (value: unknown): string =>
  typeof value === "string" && !/^[a-z][a-z0-9-]*$/.test(value)
    ? JSON.stringify(value)
    : String(value);

/** The words a schema chooses among, for its comment; none when it does not choose. */
function choices(schema: Schema): string[] {
  const inner = bareSchema(schema);
  return inner instanceof z.ZodEnum ? Object.values(inner.enum).map(String) : [];
}

function chosen(schema: Schema, word: string | undefined): Schema {
  const union = bareSchema(schema);
  if (!(union instanceof z.ZodUnion)) return union;
  const { options } = union.def;
  const named =
    union instanceof z.ZodDiscriminatedUnion &&
    options.find(
      (option) =>
        word !== undefined && option._zod.propValues?.[union.def.discriminator]?.has(word),
    );
  return bareSchema(named || (options[0] as Schema));
}

function exampleOf(schema: Schema, word?: string): unknown {
  const inner = chosen(schema, word);
  if (inner instanceof z.ZodLiteral) return [...inner.values][0];
  if (inner instanceof z.ZodEnum) return Object.values(inner.enum)[0];
  if (inner instanceof z.ZodBoolean) return false;
  if (inner instanceof z.ZodNumber)
    return Math.max(inner.minValue ?? 0, Math.min(inner.maxValue ?? 1, 1));
  if (inner instanceof z.ZodTuple) return inner.def.items.map((item) => exampleOf(item));
  if (inner instanceof z.ZodArray)
    return (
      [0, 1, 2, 3]
        .map((length) => Array.from({ length }, () => exampleOf(inner.element)))
        .find((list) => takes(inner, list)) ?? []
    );
  if (inner instanceof z.ZodRecord) return { "to-be-named": exampleOf(inner.valueType) };
  if (inner instanceof z.ZodObject) {
    return Object.fromEntries(
      Object.entries(inner.shape)
        .filter(([, field]) => !takes(field, undefined))
        .map(([key, field]) => [key, exampleOf(field)]),
    );
  }
  return samples.find((sample) => takes(inner, sample));
}

function valueLines(value: unknown, indent: string): string[] {
  if (Array.isArray(value)) {
    if (value.every((item) => typeof item !== "object"))
      return [` [${value.map(scalar).join(", ")}]`];
    return [
      "",
      ...value.flatMap((item) => {
        const [first = "", ...rest] = objectLines(item as object, `${indent}    `);
        return [`${indent}  - ${first.trimStart()}`, ...rest];
      }),
    ];
  }
  return typeof value === "object" && value !== null
    ? ["", ...objectLines(value, `${indent}  `)]
    : [` ${scalar(value)}`];
}

function objectLines(value: object, indent: string): string[] {
  return Object.entries(value).flatMap(([key, inner]) => {
    const [first = "", ...rest] = valueLines(inner, indent);
    return [`${indent}${key}:${first}`, ...rest];
  });
}

function fieldLines(key: string, field: Schema, word: string | undefined): string[] {
  const optional = takes(field, undefined) && key !== "source";
  const words = choices(field);
  const comment = [
    described(field),
    words.length > 0 ? `One of: ${words.join(", ")}.` : "",
    optional ? "May be left out." : "",
  ]
    .filter(Boolean)
    .join(". ")
    .replace(/\.\./g, ".");
  const lines = objectLines({ [key]: exampleOf(field, word) }, "");
  return [
    ...(comment ? [`# ${comment}`] : []),
    ...lines.map((line) => (optional ? `# ${line}` : line)),
  ];
}

/** The sorts of a kind ("drill", "handle" … for an instrument); none where it has only one. */
export function sortsOf(kind: DefinitionKind): string[] {
  const union: Schema = definitions[kind].schema;
  if (!(union instanceof z.ZodDiscriminatedUnion)) return [];
  return union.def.options.flatMap((option) =>
    [...(option._zod.propValues?.[union.def.discriminator] ?? [])].map(String),
  );
}

/** A commented definition to start from, each required key filled so that it validates; `schemaFile` is relative to the new file. */
export function startingText(kind: DefinitionKind, schemaFile: string, sort?: string): string {
  const object = chosen(definitions[kind].schema, sort);
  const fields = object instanceof z.ZodObject ? Object.entries(object.shape) : [];
  return `${[
    `# yaml-language-server: $schema=${schemaFile}`,
    `# $schema: ${schemaFile}`,
    ...fields.flatMap(([key, field]) => fieldLines(key, field, sort)),
  ].join("\n")}\n`;
}

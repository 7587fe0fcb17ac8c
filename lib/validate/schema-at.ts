import { z } from "zod";
import { bareSchema } from "../model/bare-schema.ts";
import { nearestName } from "../model/nearest-name.ts";

/** The keys an object schema has; none for other schemas. */
export function keysOf(schema: z.core.$ZodType): string[] {
  const object = bareSchema(schema);
  return object instanceof z.ZodObject ? Object.keys(object.shape) : [];
}

const isRecord = (data: unknown): data is Record<string, unknown> =>
  typeof data === "object" && data !== null && !Array.isArray(data);

function likeness(option: z.core.$ZodType, data: Record<string, unknown>): number {
  const object = bareSchema(option);
  if (!(object instanceof z.ZodObject)) return -1000;
  const keys = Object.keys(object.shape);
  const present = Object.keys(data);
  const near = present.filter(
    (key) =>
      keys.includes(key) ||
      nearestName(
        key,
        keys.filter((known) => !present.includes(known)),
      ),
  ).length;
  const missing = keys.filter((key) => {
    const field = object.shape[key];
    return (
      field instanceof z.ZodType && !field.safeParse(undefined).success && !present.includes(key)
    );
  }).length;
  return near - missing;
}

/** The branch of a union that the data means: by its discriminator, else the one whose keys it mostly has. */
export function branch(schema: z.core.$ZodType, data: unknown): z.core.$ZodType {
  const union = bareSchema(schema);
  if (!(union instanceof z.ZodUnion) || !isRecord(data)) return union;
  const options = union.def.options;
  if (union instanceof z.ZodDiscriminatedUnion) {
    const { discriminator } = union.def;
    return (
      options.find((option) =>
        option._zod.propValues?.[discriminator]?.has(data[discriminator] as string),
      ) ?? union
    );
  }
  return options.reduce((best, option) =>
    likeness(option, data) > likeness(best, data) ? option : best,
  );
}

/** The schema of the value at a path of the data, its wrapping taken off; undefined where the path leaves the schema. */
export function schemaAt(
  schema: z.core.$ZodType,
  path: readonly PropertyKey[],
  data: unknown,
): z.core.$ZodType | undefined {
  const here = branch(schema, data);
  const [key, ...rest] = path;
  if (key === undefined) return here;
  const value = isRecord(data)
    ? data[String(key)]
    : Array.isArray(data)
      ? data[Number(key)]
      : undefined;
  const inner =
    here instanceof z.ZodObject
      ? here.shape[String(key)]
      : here instanceof z.ZodArray
        ? here.def.element
        : here instanceof z.ZodTuple
          ? here.def.items[Number(key)]
          : here instanceof z.ZodRecord
            ? here.def.valueType
            : undefined;
  return inner && schemaAt(inner, rest, value);
}

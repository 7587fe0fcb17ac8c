import { z } from "zod";

/** A schema without what merely wraps it: optional, default, transform. Reads zod's definition objects; the one place that does. */
export function bareSchema(schema: z.core.$ZodType): z.core.$ZodType {
  if (
    schema instanceof z.ZodOptional ||
    schema instanceof z.ZodDefault ||
    schema instanceof z.ZodNullable
  )
    return bareSchema(schema.def.innerType);
  return schema instanceof z.ZodPipe ? bareSchema(schema.def.in) : schema;
}

import { z } from "zod";
import { type DefinitionKind, definitions } from "../model/definition.ts";
import { CheckReport } from "../model/report.ts";

function written(title: string, schema: z.ZodType): [file: string, text: string] {
  const json = z.toJSONSchema(schema, {
    io: "input",
    target: "draft-2020-12",
    unrepresentable: "any",
  });
  return [`${title}.json`, `${JSON.stringify({ title, ...json }, null, 2)}\n`];
}

/** A JSON Schema for each kind of definition, as an author writes it, by file name ("zone.json"), from which editors complete; and one for what a check reports as JSON ("check-report.json"). */
export function jsonSchemas(): ReadonlyMap<string, string> {
  const kinds = Object.keys(definitions) as DefinitionKind[];
  return new Map([
    ...kinds.map((kind) => written(kind, definitions[kind].schema)),
    written("check-report", CheckReport),
  ]);
}

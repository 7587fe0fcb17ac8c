import { z } from "zod";
import { type DefinitionKind, definitions } from "../model/definition.ts";

/** A JSON Schema for each kind of definition, as an author writes it, by file name ("zone.json"); editors complete from it. */
export function jsonSchemas(): ReadonlyMap<string, string> {
  return new Map(
    (Object.keys(definitions) as DefinitionKind[]).map((kind) => {
      const schema = z.toJSONSchema(definitions[kind].schema, {
        io: "input",
        target: "draft-2020-12",
        unrepresentable: "any",
      });
      return [`${kind}.json`, `${JSON.stringify({ title: kind, ...schema }, null, 2)}\n`];
    }),
  );
}

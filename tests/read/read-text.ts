import { type ParsedYaml, parseYaml } from "../../lib/read/parse-yaml.ts";

/** A YAML text parsed as a file named "file.yaml". */
export function readText(text: string): ParsedYaml {
  return parseYaml("file.yaml", new TextEncoder().encode(text));
}

/** What was refused, as "rule line:column". */
export function refusals(parsed: ParsedYaml): string[] {
  return parsed.findings.map(({ rule, place }) => `${rule} ${place.line}:${place.column}`);
}

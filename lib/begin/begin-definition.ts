import { existsSync, mkdirSync, readdirSync, writeFileSync } from "node:fs";
import { dirname, join, relative, resolve, sep } from "node:path";
import { type DefinitionKind, definitions } from "../model/definition.ts";
import { suggestion } from "../model/nearest-name.ts";
import { Stop } from "../model/stop.ts";
import { slug } from "../model/text.ts";
import { sortsOf, startingText } from "./starting-text.ts";

/** What to begin: a kind of definition, its id, and where it belongs. `out` is the folder that holds schema/. */
export type Beginning = {
  readonly library: string;
  readonly out: string;
  readonly kind: DefinitionKind;
  readonly id: string;
  readonly system?: string;
  readonly sort?: string;
};

function needSlug(what: string, name: string): string {
  if (!slug.safeParse(name).success)
    throw new Stop(
      2,
      `Expected ${what} of a-z, 0-9 and single hyphens, got "${name}".`,
      "The id becomes the file's name.",
    );
  return name;
}

/** The systems of a library, by their folders. */
function systemsOf(library: string): readonly string[] {
  const folder = join(library, "systems");
  return existsSync(folder) ? readdirSync(folder).sort() : [];
}

function needSystem(library: string, system: string): void {
  const known = systemsOf(library);
  if (system !== "general" && !known.includes(system))
    throw new Stop(
      2,
      `Unknown system "${system}".`,
      `${suggestion(system, known)} A new one is begun with: trayleaf new system ${system}.`,
    );
}

function pathOf({ library, kind, id, system }: Beginning): string[] {
  const { folder, scope } = definitions[kind];
  if (scope === "single") return [folder];
  needSlug("an id", id);
  if (scope === "library") return [folder, `${id}.yaml`];
  if (scope === "system-single") return ["systems", id, folder];
  if (system === undefined)
    throw new Stop(
      2,
      `Missing --system: a ${kind} belongs to a system.`,
      "Add --system <id>, or --system general for a part of no system.",
    );
  needSlug("a system", system);
  needSystem(library, system);
  return [...(system === "general" ? ["general"] : ["systems", system]), folder, `${id}.yaml`];
}

/** Writes a commented file to start from and returns its path; never overwrites. Throws a Stop. */
export function beginDefinition(beginning: Beginning): string {
  const { library, out, kind, sort } = beginning;
  const sorts = sortsOf(kind);
  if (sort !== undefined && !sorts.includes(sort))
    throw new Stop(
      2,
      `Unknown sort "${sort}" of ${kind}.`,
      sorts.length > 0
        ? `Known: ${sorts.join(", ")}.`
        : `A ${kind} has no sorts; leave --sort out.`,
    );
  const file = join(library, ...pathOf(beginning));
  const schemaFile = relative(dirname(resolve(file)), resolve(out, "schema", `${kind}.json`))
    .split(sep)
    .join("/");
  mkdirSync(dirname(file), { recursive: true });
  try {
    writeFileSync(file, startingText(kind, schemaFile, sort), { flag: "wx" });
  } catch (error) {
    if (error instanceof Error && "code" in error && error.code === "EEXIST")
      throw new Stop(2, `"${file}" exists already.`, "Choose another id, or edit the file.");
    throw error;
  }
  return file;
}

import { fileURLToPath } from "node:url";
import nunjucks, { type Environment, type Loader } from "nunjucks";

/** The folder of all templates. */
export const templatesFolder = fileURLToPath(new URL("../../templates/", import.meta.url));

/** A template environment that escapes every value and throws on an unknown one; reads `templates/` unless another loader is given. */
export function templateEnvironment(loader?: Loader): Environment {
  const options = {
    autoescape: true,
    throwOnUndefined: true,
    trimBlocks: true,
    lstripBlocks: true,
  };
  return new nunjucks.Environment(
    loader ?? new nunjucks.FileSystemLoader(templatesFolder),
    options,
  );
}

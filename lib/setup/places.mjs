import { join, resolve } from "node:path";
import { fileURLToPath } from "node:url";

const root = resolve(fileURLToPath(new URL("../../", import.meta.url)));

/** Absolute paths of the project's folder and of what setting up keeps there between runs. */
export const places = {
  root,
  cache: join(root, ".trayleaf-cache"),
  browserRecord: join(root, ".trayleaf-cache", "browser.json"),
  commandLine: join(root, "lib", "cli.ts"),
};

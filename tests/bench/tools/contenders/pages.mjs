import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { asJavaScript } from "../../../../lib/setup/as-javascript.mjs";
import { hashInputs } from "../../../../lib/setup/unchanged.mjs";

// Builds the pages of a folder of instruments, unless the hash of all that they depend on says that they stand already.
const [library = "", out = ""] = process.argv.slice(2);
const kept = join(out, "inputs");
const inputs = hashInputs({ root: process.cwd(), library, argv: [] });
if (!existsSync(kept) || readFileSync(kept, "utf8") !== inputs) {
  const program = await asJavaScript(fileURLToPath(new URL("pages.ts", import.meta.url)));
  const { buildPages } = await import(pathToFileURL(program).href);
  await buildPages(library, out);
  writeFileSync(kept, inputs);
}

import { fileURLToPath, pathToFileURL } from "node:url";
import { asJavaScript } from "./lib/setup/as-javascript.mjs";

/** Bare `npx @11ty/eleventy` writes the pages that `trayleaf build --no-pdf` writes, into .dist-pages. */
export default async function configure(config) {
  const program = await asJavaScript(fileURLToPath(new URL("lib/bare-pages.ts", import.meta.url)));
  const { configureBarePages } = await import(pathToFileURL(program).href);
  return configureBarePages(config);
}

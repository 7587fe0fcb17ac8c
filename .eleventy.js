import { tsImport } from "tsx/esm/api";

/** Bare `npx @11ty/eleventy` writes the pages that `trayleaf build --no-pdf` writes, into .dist-pages. */
export default async function configure(config) {
  const { configureBarePages } = await tsImport("./lib/bare-pages.ts", import.meta.url);
  return configureBarePages(config);
}

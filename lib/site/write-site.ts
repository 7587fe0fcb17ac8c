import { copyFileSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import Eleventy, { type EleventyConfig } from "@11ty/eleventy";
import { Stop } from "../model/stop.ts";
import { templatesFolder } from "./nunjucks.ts";
import type { Page } from "./page.ts";
import { cardPages, cardPath } from "./pages/card-pages.ts";
import { findingsPage } from "./pages/findings-page.ts";
import { generalPages, markRows } from "./pages/general-pages.ts";
import { instrumentPages, screwPages } from "./pages/part-pages.ts";
import { placePages } from "./pages/place-pages.ts";
import type { SiteInput } from "./site-input.ts";

const packages = fileURLToPath(new URL("../../node_modules/", import.meta.url));
const weights = ["400", "600", "700"] as const;

/** All pages of the site, in the order of their paths. */
function sitePages(input: SiteInput): Page[] {
  const pages = [
    ...generalPages(input),
    findingsPage(input),
    ...cardPages(input),
    ...screwPages(input),
    ...instrumentPages(input),
    ...placePages(input),
  ];
  return pages.sort((a, b) => (a.path < b.path ? -1 : 1));
}

function searchIndex(input: SiteInput): string {
  const marks = markRows(input).map(([mark, what]) => ({
    mark: mark?.text ?? "",
    text: what?.text ?? "",
    to: what?.to ?? "",
  }));
  const cards = input.sheets.map((sheet) => ({
    mark: "",
    text: `${sheet.title}, ${sheet.format.name}`,
    to: cardPath(sheet),
  }));
  return `window.TRAYLEAF_INDEX=${JSON.stringify([...marks, ...cards]).replaceAll("<", "\\u003c")};\n`;
}

/** Copies type, styles and scripts beside the pages, with the search index as a classic script. */
export function copyAssets(folder: string, input: SiteInput): void {
  const put = (from: string, to: string) => {
    mkdirSync(dirname(join(folder, to)), { recursive: true });
    copyFileSync(from, join(folder, to));
  };
  for (const weight of weights) {
    for (const subset of ["latin", "latin-ext"]) {
      const name = `atkinson-hyperlegible-next-${subset}-${weight}-normal.woff2`;
      put(
        join(packages, "@fontsource/atkinson-hyperlegible-next/files", name),
        `assets/fonts/${name}`,
      );
    }
  }
  for (const name of ["fonts.css", "sheet.css", "site.css"])
    put(join(templatesFolder, "style", name), `style/${name}`);
  put(join(templatesFolder, "script/search.js"), "script/search.js");
  const library = readFileSync(join(packages, "minisearch/dist/umd/index.js"), "utf8");
  writeFileSync(
    join(folder, "script/minisearch.js"),
    library.replace(/\n\/\/# sourceMappingURL=.*\s*$/, "\n"),
  );
  writeFileSync(join(folder, "script/search-index.js"), searchIndex(input));
}

/** Hands Eleventy the pages as plain data; templates are Nunjucks only and content never passes through as files. */
export function configurePages(config: EleventyConfig, input: SiteInput): number {
  const pages = sitePages(input).map((page) => ({
    ...page,
    root: "../".repeat(page.path.split("/").length - 1),
  }));
  for (const { path } of pages) {
    if (!/^([a-z0-9-]+\/)*[a-z0-9-]+\.html$/.test(path)) {
      throw new Stop(5, `The page ${path} would lie outside the site.`, "Report this.");
    }
  }
  const { language, banner, defer, ask } = input.catalogue.publisher;
  config.setUseGitIgnore(false);
  config.ignores.delete("**/node_modules/**");
  config.setTemplateFormats(["njk"]);
  config.setNunjucksEnvironmentOptions({
    autoescape: true,
    throwOnUndefined: true,
    trimBlocks: true,
    lstripBlocks: true,
  });
  config.addGlobalData("pages", pages);
  config.addGlobalData("site", {
    language,
    banner: banner ?? "",
    defer,
    ask: `${ask.role}, ${ask.telephone}`,
  });
  return pages.length;
}

/** Writes every page and asset of the site into `folder`; returns the number of pages. Stops with the cause when Eleventy fails. */
export async function writeSite(input: SiteInput, folder: string): Promise<number> {
  let count = 0;
  const eleventy = new Eleventy(join(templatesFolder, "pages"), folder, {
    configPath: false,
    quietMode: true,
    config: (config) => {
      count = configurePages(config, input);
    },
  });
  eleventy.disableLogger();
  try {
    await eleventy.write();
  } catch (error) {
    if (error instanceof Stop) throw error;
    const cause =
      error instanceof Error
        ? ((error as { originalError?: Error }).originalError ?? error)
        : new Error(String(error));
    throw new Stop(
      5,
      `The site could not be written: ${cause.message.split("\n")[0]}.`,
      "Look at templates/pages.",
    );
  }
  copyAssets(folder, input);
  return count;
}

import { copyFileSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import type { EleventyConfig } from "@11ty/eleventy";
import { templatesFolder } from "./nunjucks.ts";
import type { Page } from "./page.ts";
import { aboutPage } from "./pages/about-page.ts";
import { cardPages } from "./pages/card-pages.ts";
import { claimPages } from "./pages/claim-pages.ts";
import { documentPages } from "./pages/document-pages.ts";
import { findingsPage } from "./pages/findings-page.ts";
import { galleryPage } from "./pages/gallery-page.ts";
import { glossaryPage } from "./pages/glossary-page.ts";
import { hostingPage } from "./pages/hosting-page.ts";
import { indexPages } from "./pages/index-pages.ts";
import { instrumentPages } from "./pages/instrument-pages.ts";
import { marksPage } from "./pages/marks-page.ts";
import { mutationPages } from "./pages/mutation-page.ts";
import { platePages } from "./pages/plate-pages.ts";
import { practicePages } from "./pages/practice-pages.ts";
import { procedurePages } from "./pages/procedure-pages.ts";
import { proofPage } from "./pages/proof-page.ts";
import { rulePages } from "./pages/rule-pages.ts";
import { screwPages } from "./pages/screw-pages.ts";
import { searchEntries } from "./pages/search-entries.ts";
import { startPage } from "./pages/start-page.ts";
import { systemPages } from "./pages/system-pages.ts";
import { techniquePages } from "./pages/technique-pages.ts";
import { trayPages } from "./pages/tray-pages.ts";
import { paperStyles } from "./paper-styles.ts";
import type { SiteInput } from "./site-input.ts";
import { configurePages, writePages } from "./write-pages.ts";

const packages = fileURLToPath(new URL("../../node_modules/", import.meta.url));
const weights = ["400", "600", "700"] as const;

/** All pages of the site, in the order of their paths. */
function sitePages(all: SiteInput): Page[] {
  const input = { ...all, sheets: all.sheets.filter(({ practice }) => practice === undefined) };
  const pages = [
    startPage(input),
    marksPage(input),
    aboutPage(input),
    glossaryPage(input),
    hostingPage(input),
    findingsPage(input),
    ...mutationPages(input),
    ...rulePages(input),
    ...indexPages(input),
    ...claimPages(input),
    ...documentPages(input),
    ...systemPages(input),
    ...platePages(input),
    ...screwPages(input),
    ...instrumentPages(input),
    ...trayPages(input),
    ...procedurePages(input),
    ...techniquePages(input),
    ...cardPages(input),
    ...practicePages(all),
    galleryPage(input),
    proofPage(input),
  ];
  return pages.sort((a, b) => (a.path < b.path ? -1 : 1));
}

function searchIndex(input: SiteInput): string {
  const entries = JSON.stringify(searchEntries(input)).replaceAll("<", "\\u003c");
  return `window.TRAYLEAF_INDEX=${entries};\n`;
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
  writeFileSync(join(folder, "style/paper.css"), paperStyles());
  put(join(templatesFolder, "script/search.js"), "script/search.js");
  const library = readFileSync(join(packages, "minisearch/dist/umd/index.js"), "utf8");
  writeFileSync(
    join(folder, "script/minisearch.js"),
    library.replace(/\n\/\/# sourceMappingURL=.*\s*$/, "\n"),
  );
  writeFileSync(join(folder, "script/search-index.js"), searchIndex(input));
}

/** Hands Eleventy the pages of a whole site; gives their number. */
export const configureSite = (config: EleventyConfig, input: SiteInput): number =>
  configurePages(config, sitePages(input), input.catalogue.publisher);

/** Writes every page and asset of the site into `folder`; returns the number of pages. Stops with the cause when Eleventy fails; an error of the disk passes on. */
export async function writeSite(input: SiteInput, folder: string): Promise<number> {
  const count = await writePages(sitePages(input), input.catalogue.publisher, folder);
  copyAssets(folder, input);
  return count;
}

import { copyFileSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import Eleventy, { type EleventyConfig } from "@11ty/eleventy";
import { Stop } from "../model/stop.ts";
import { templatesFolder } from "./nunjucks.ts";
import type { Link, Page } from "./page.ts";
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

const packages = fileURLToPath(new URL("../../node_modules/", import.meta.url));
const weights = ["400", "600", "700"] as const;

/** What stands above every page. */
const nav: readonly Link[] = [
  { text: "Start", to: "index.html" },
  { text: "Marks A–Z", to: "marks/index.html" },
  { text: "All cards", to: "cards/index.html" },
  { text: "Safety", to: "about/index.html" },
];

/** What stands below every page: the indexes, then what the site says of itself. */
const more: readonly Link[] = [
  { text: "Systems", to: "systems/index.html" },
  { text: "Plates", to: "plates/index.html" },
  { text: "Screws", to: "screws/index.html" },
  { text: "Instruments", to: "instruments/index.html" },
  { text: "Trays", to: "trays/index.html" },
  { text: "Orders of work", to: "procedures/index.html" },
  { text: "Techniques", to: "techniques/index.html" },
  { text: "Glossary", to: "glossary/index.html" },
  { text: "Rules", to: "rules/index.html" },
  { text: "Sources", to: "documents/index.html" },
  { text: "Findings", to: "findings/index.html" },
  { text: "How to host this", to: "hosting/index.html" },
];

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

/** The pages above a page: the start page, then each index page of the folders it lies in. */
function crumbs(path: string, titles: ReadonlyMap<string, string>): readonly Link[] {
  const folders = path.split("/").slice(0, -1);
  const above = folders.map((_, at) => `${folders.slice(0, at + 1).join("/")}/index.html`);
  return ["index.html", ...above].flatMap((to) => {
    const text = to === "index.html" ? "Start" : titles.get(to);
    return text === undefined || to === path ? [] : [{ text, to }];
  });
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

/** Hands Eleventy the pages as plain data; templates are Nunjucks only and content never passes through as files. */
export function configurePages(config: EleventyConfig, input: SiteInput): number {
  const all = sitePages(input);
  const titles = new Map(all.map(({ path, title }) => [path, title]));
  const pages = all.map((page) => ({
    ...page,
    crumbs: crumbs(page.path, titles),
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
    nav,
    more,
  });
  return pages.length;
}

/** Writes every page and asset of the site into `folder`; returns the number of pages. Stops with the cause when Eleventy fails; an error of the disk passes on. */
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
    if ("code" in cause && "syscall" in cause) throw cause;
    throw new Stop(
      5,
      `The site could not be written: ${cause.message.trim().replace(/\s*\n\s*/g, ": ")}.`,
      "Look at templates/pages.",
    );
  }
  copyAssets(folder, input);
  return count;
}

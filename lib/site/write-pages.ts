import { join } from "node:path";
import Eleventy, { type EleventyConfig } from "@11ty/eleventy";
import type { Publisher } from "../model/publisher.ts";
import { Stop } from "../model/stop.ts";
import { templateEnvironment, templatesFolder } from "./nunjucks.ts";
import type { Link, Page } from "./page.ts";

/** What the publisher says on every page. */
type Voice = Pick<Publisher, "language" | "banner" | "defer" | "ask">;

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

/** The pages above a page: the start page, then each index page of the folders it lies in. */
function crumbs(path: string, titles: ReadonlyMap<string, string>): readonly Link[] {
  const folders = path.split("/").slice(0, -1);
  const above = folders.map((_, at) => `${folders.slice(0, at + 1).join("/")}/index.html`);
  return ["index.html", ...above].flatMap((to) => {
    const text = to === "index.html" ? "Start" : titles.get(to);
    return text === undefined || to === path ? [] : [{ text, to }];
  });
}

/** Hands Eleventy the pages as plain data; templates are Nunjucks only and content never passes through as files. */
export function configurePages(
  config: EleventyConfig,
  all: readonly Page[],
  { language, banner, defer, ask }: Voice,
): number {
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
  config.setUseGitIgnore(false);
  config.ignores.delete("**/node_modules/**");
  config.setTemplateFormats(["njk"]);
  // Eleventy compiles what stands in its own folder anew for each page; what is included from here it compiles once.
  config.setLibrary("njk", templateEnvironment());
  config.addGlobalData(
    "permalink",
    () =>
      ({ leaf }: { readonly leaf: Page }) =>
        leaf.path,
  );
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

/** Writes pages into `folder`; returns their number. Stops with the cause when Eleventy fails; an error of the disk passes on. */
export async function writePages(
  pages: readonly Page[],
  voice: Voice,
  folder: string,
): Promise<number> {
  let count = 0;
  const eleventy = new Eleventy(join(templatesFolder, "pages"), folder, {
    configPath: false,
    quietMode: true,
    config: (config) => {
      count = configurePages(config, pages, voice);
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
  return count;
}

import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { rules } from "./check/rules.ts";
import { siteDrawings } from "./compose/site-drawings.ts";
import { pictures } from "./draw/pictures.ts";
import { checkLibrary } from "./index.ts";
import { refuses } from "./model/finding.ts";
import { Stop } from "./model/stop.ts";
import { zipFolder } from "./publish/zip.ts";
import { jsonSchemas } from "./report/json-schemas.ts";
import { renderSheet } from "./site/render-sheet.ts";
import { configureSite, copyAssets } from "./site/write-site.ts";

type Config = Parameters<typeof configureSite>[0] & {
  on(event: "eleventy.after", then: () => void): void;
};

/** Lets Eleventy alone write the demo library's pages, without PDFs, into .dist-pages. */
export function configureBarePages(config: Config): { dir: { input: string; output: string } } {
  const { catalogue, derived, sheets, traces, findings, locate, today } = checkLibrary("content");
  if (!catalogue || !derived || !sheets || !traces || findings.some(refuses)) {
    throw new Stop(1, "The library is refused.", "Run trayleaf check.");
  }
  const fragments = new Map(
    sheets.map((sheet) => [`${sheet.id}.${sheet.format.id}`, renderSheet(sheet)]),
  );
  const prints = new Map();
  const told = {
    catalogue,
    derived,
    sheets,
    traces,
    locate,
    fragments,
    findings,
    prints,
    packs: [],
  };
  const drawings = siteDrawings({ catalogue, derived, pictures, today }, sheets);
  const input = { ...told, rules, pictures, drawings, today, pdf: false };
  const output = ".dist-pages";
  configureSite(config, input);
  config.on("eleventy.after", () => {
    copyAssets(output, input);
    mkdirSync(join(output, "schema"), { recursive: true });
    for (const [file, text] of jsonSchemas()) writeFileSync(join(output, "schema", file), text);
    rmSync(join(output, "trayleaf-site.zip"), { force: true });
    zipFolder(output, "trayleaf-site.zip");
  });
  return { dir: { input: "templates/pages", output } };
}

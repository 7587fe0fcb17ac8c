import { existsSync, mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { setTimeout } from "node:timers/promises";
import { rules } from "../../lib/check/rules.ts";
import { packsOf } from "../../lib/compose/pack-contents.ts";
import { siteDrawings } from "../../lib/compose/site-drawings.ts";
import { pictures } from "../../lib/draw/pictures.ts";
import { checkLibrary } from "../../lib/index.ts";
import { zipFolder } from "../../lib/publish/zip.ts";
import { jsonSchemas } from "../../lib/report/json-schemas.ts";
import { renderSheet } from "../../lib/site/render-sheet.ts";
import { writeSite } from "../../lib/site/write-site.ts";
import { sharedFolder } from "./shared-folder.ts";

const folder = join(sharedFolder, "dist");
const done = join(sharedFolder, "done");
const failed = join(sharedFolder, "failed");

function put(file: string, text: string): void {
  mkdirSync(dirname(join(folder, file)), { recursive: true });
  writeFileSync(join(folder, file), text);
}

/** Writes the demo site as a build does, with a stand-in for each PDF and thumbnail. */
async function write(): Promise<void> {
  const checked = checkLibrary("content", "2026-11-25");
  const { catalogue, derived, sheets, traces, locate } = checked;
  if (!catalogue || !derived || !sheets || !traces) throw new Error("The demo library has stops");
  const keys = sheets.map((sheet) => `${sheet.id}.${sheet.format.id}`);
  const packs = packsOf(sheets).map((pack) => ({ ...pack, bytes: 1024 }));
  for (const file of keys.flatMap((key) => [`pdf/${key}.pdf`, `thumbs/${key}.png`])) put(file, "");
  for (const { file } of packs) put(file, "");
  for (const [file, text] of jsonSchemas()) put(`schema/${file}`, text);
  const fragments = new Map(sheets.map((sheet, at) => [keys[at] ?? "", renderSheet(sheet)]));
  const prints = new Map(keys.map((key) => [key, { pdfBytes: 1024, thumb: true }]));
  const { findings, today } = checked;
  const drawings = siteDrawings({ catalogue, derived, pictures, today }, sheets);
  await writeSite(
    {
      ...{ catalogue, derived, sheets, traces, locate, fragments, findings, prints },
      ...{ packs, rules, pictures, drawings, today, pdf: true },
    },
    folder,
  );
  zipFolder(folder, "trayleaf-site.zip");
}

/** True for the one caller that made the shared folder. */
function isFirst(): boolean {
  try {
    mkdirSync(sharedFolder);
    return true;
  } catch (error) {
    if (error instanceof Error && "code" in error && error.code === "EEXIST") return false;
    throw error;
  }
}

/** The folder of the demo site, written by the first test file that asks and awaited by the others. */
export async function builtSite(): Promise<string> {
  if (isFirst()) {
    await write().catch((error: unknown) => {
      writeFileSync(failed, "");
      throw error;
    });
    writeFileSync(done, "");
    return folder;
  }
  while (!existsSync(done)) {
    if (existsSync(failed)) throw new Error("The shared site could not be written");
    await setTimeout(100);
  }
  return folder;
}

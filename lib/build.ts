import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { check } from "./check/check.ts";
import { rules } from "./check/rules.ts";
import { packsOf } from "./compose/pack-contents.ts";
import { pictures } from "./draw/pictures.ts";
import { type BuildOptions, checkLibrary } from "./index.ts";
import type { BuiltPack, BuiltPrint } from "./model/built.ts";
import { type Finding, refuses } from "./model/finding.ts";
import type { SheetFit } from "./model/rule.ts";
import type { SheetView } from "./model/sheet.ts";
import { Stop } from "./model/stop.ts";
import { printPacks } from "./print/print-pack.ts";
import { type Printed, printSheets } from "./print/print-sheets.ts";
import { printStyles } from "./print/print-styles.ts";
import { expectedTexts, verifyPdf } from "./print/verify-pdf.ts";
import { takeLock } from "./publish/lock.ts";
import { type Manifest, readManifest, sha256, writeManifest } from "./publish/manifest.ts";
import { dropStaging, openStaging, recover, swapIn } from "./publish/staging.ts";
import { zipFolder } from "./publish/zip.ts";
import { jsonSchemas } from "./report/json-schemas.ts";
import { reportJson } from "./report/report-json.ts";
import { reportText } from "./report/report-text.ts";
import { runSummary } from "./report/run-summary.ts";
import { hashInputs } from "./setup/unchanged.mjs";
import { renderPack } from "./site/render-pack.ts";
import { renderSheet } from "./site/render-sheet.ts";
import { writeSite } from "./site/write-site.ts";

const root = fileURLToPath(new URL("../", import.meta.url));
const fonts = join(root, "node_modules/@fontsource/atkinson-hyperlegible-next/files");
const keyOf = (sheet: SheetView): string => `${sheet.id}.${sheet.format.id}`;
const points = 72 / 25.4;

function put(folder: string, file: string, data: string | Uint8Array): void {
  mkdirSync(dirname(join(folder, file)), { recursive: true });
  writeFileSync(join(folder, file), data);
}

/** A file of the last build, when it is still there as it was written. */
function unharmed(out: string, file: string, before: Manifest | undefined): Buffer | undefined {
  const path = join(out, file);
  const bytes = existsSync(path) ? readFileSync(path) : undefined;
  return bytes && before?.files[file]?.sha256 === sha256(bytes) ? bytes : undefined;
}

/** Prints what changed since the last build, takes the rest from it, and reads every PDF back. */
async function printAll(
  sheets: readonly SheetView[],
  fragments: ReadonlyMap<string, string>,
  { out, staging, today }: { out: string; staging: string; today: string },
): Promise<{
  fits: SheetFit[];
  prints: Map<string, BuiltPrint>;
  keys: Record<string, string>;
  packs: BuiltPack[];
}> {
  const language = sheets[0]?.identity.language ?? "en";
  const css = printStyles(join(root, "templates/style"), fonts);
  const options = { css, language, day: today };
  const before = readManifest(out);
  const keys: Record<string, string> = {};
  const browser = process.env["PUPPETEER_EXECUTABLE_PATH"] ?? "";
  const made = new Map<string, Printed>();
  const jobs = sheets.flatMap((sheet) => {
    const key = keyOf(sheet);
    const html = fragments.get(key) ?? "";
    const [pdf, png] = [`pdf/${key}.pdf`, `thumbs/${key}.png`];
    keys[pdf] = sha256(`${browser}\n${today}\n${css}\n${html}`);
    const same = before?.prints[pdf] === keys[pdf];
    const [oldPdf, oldPng] = same ? [pdf, png].map((file) => unharmed(out, file, before)) : [];
    if (oldPdf && oldPng) {
      made.set(key, { key, pdf: oldPdf, thumbnail: oldPng, overflow: [] });
      return [];
    }
    return [
      {
        key,
        title: `${sheet.title} (${sheet.identity.card})`,
        html,
        width: sheet.format.width,
        height: sheet.format.height,
      },
    ];
  });
  for (const printed of await printSheets(jobs, options)) made.set(printed.key, printed);
  const fits: SheetFit[] = [];
  const prints = new Map<string, BuiltPrint>();
  for (const sheet of sheets) {
    const key = keyOf(sheet);
    const printed = made.get(key);
    if (!printed) throw new Stop(5, `The sheet ${key} was not printed.`, "Run again.");
    const facts = await verifyPdf(printed.pdf, expectedTexts(sheet));
    const off = Math.max(
      Math.abs(facts.size[0] - sheet.format.width * points),
      Math.abs(facts.size[1] - sheet.format.height * points),
    );
    const paper = off > 1 ? [{ what: "paper", by: Math.round((off / points) * 10) / 10 }] : [];
    fits.push({
      sheet: key,
      pages: facts.pages,
      overflow: [...printed.overflow, ...paper],
      missing: facts.missing,
    });
    put(staging, `pdf/${key}.pdf`, printed.pdf);
    put(staging, `thumbs/${key}.png`, printed.thumbnail);
    prints.set(key, { pdfBytes: printed.pdf.length, thumb: true });
  }
  const packs = packsOf(sheets);
  const packJobs = packs.map((pack) => ({
    file: pack.file,
    title: pack.title,
    html: renderPack(
      {
        title: pack.title,
        banner: pack.banner,
        defer: pack.defer,
        language,
        paperFormat: pack.paper === "A4" ? "a4-portrait" : "letter-portrait",
        entries: pack.entries.map(({ id, title, page }) => ({ anchor: `card-${id}`, title, page })),
      },
      pack.sheets.map((sheet) => ({
        anchor: `card-${sheet.id}`,
        html: fragments.get(keyOf(sheet)) ?? "",
      })),
    ),
  }));
  const built: BuiltPack[] = [];
  const printedPacks = await printPacks(packJobs, options);
  for (const { file, title, system, paper, sheets: own } of packs) {
    const pdf = printedPacks.get(file);
    if (!pdf) throw new Stop(5, `The pack ${file} was not printed.`, "Run again.");
    const { pages } = await verifyPdf(pdf, []);
    if (pages !== own.length + 1)
      throw new Stop(
        5,
        `The pack ${file} has ${pages} pages, not ${own.length + 1}.`,
        "Shorten a title in its contents.",
      );
    put(staging, file, pdf);
    built.push({ file, title, bytes: pdf.length, system, paper });
  }
  return { fits, prints, keys, packs: built };
}

/** Builds the site and its PDFs beside `out` and swaps them in; returns the exit code. Nothing of the old build is touched before. */
export async function build(options: BuildOptions): Promise<number> {
  const { library, out, pdf } = options;
  const say = (text: string) =>
    void (options.format === "text" && process.stdout.write(`${text}\n`));
  const times: [string, number][] = [];
  let from = performance.now();
  const lap = (stage: string) => {
    const now = performance.now();
    times.push([stage, (now - from) / 1000]);
    from = now;
  };
  const unlock = takeLock(out);
  let staging: string | undefined;
  const leave = () => {
    if (staging) dropStaging(staging);
    unlock();
  };
  const interrupted = () => process.exit(130);
  const signals = ["SIGINT", "SIGTERM", "SIGHUP"] as const;
  process.on("exit", leave);
  for (const signal of signals) process.prependListener(signal, interrupted);
  try {
    recover(out);
    const inputs = hashInputs({ root, library, argv: process.argv.slice(3) });
    const { catalogue, derived, sheets, findings, locate, today } = checkLibrary(
      library,
      options.today,
    );
    lap("read, derive, check, compose");
    const told = (all: readonly Finding[]): number => {
      const located = all.map(locate);
      process.stdout.write(
        options.format === "json"
          ? reportJson(located, library)
          : reportText(located, { library, colour: options.colour }),
      );
      return all.some(refuses) ? 1 : 0;
    };
    if (!catalogue || !derived || !sheets || findings.some(refuses)) return told(findings) || 1;
    staging = openStaging(out);
    const fragments = new Map(sheets.map((sheet) => [keyOf(sheet), renderSheet(sheet)]));
    lap("sheets as HTML");
    const printed = pdf ? await printAll(sheets, fragments, { out, staging, today }) : undefined;
    lap(pdf ? "print and read back" : "no PDFs asked for");
    const judged = printed
      ? [
          ...findings.filter(({ rule }) => rules.every(({ id }) => id !== rule)),
          ...check({ catalogue, derived, today, sheets, fits: printed.fits }),
        ]
      : findings;
    if (judged.some(refuses)) return told(judged);
    const prints = printed?.prints ?? new Map<string, BuiltPrint>();
    const pages = await writeSite(
      {
        catalogue,
        derived,
        sheets,
        fragments,
        findings: judged,
        prints,
        packs: printed?.packs ?? [],
        rules,
        pictures,
        today,
        pdf,
      },
      staging,
    );
    for (const [file, text] of jsonSchemas()) put(staging, `schema/${file}`, text);
    lap("site");
    zipFolder(staging, "trayleaf-site.zip");
    lap("zip");
    const summary = runSummary(sheets, { out, pages, packs: printed?.packs.length ?? 0, pdf });
    writeManifest(staging, { inputs, summary, prints: printed?.keys ?? {} });
    swapIn(staging, out);
    staging = undefined;
    const code = told(judged);
    for (const line of summary) say(line);
    for (const [stage, seconds] of times) say(`${seconds.toFixed(1).padStart(7)} s  ${stage}`);
    return code;
  } finally {
    for (const signal of signals) process.off(signal, interrupted);
    process.off("exit", leave);
    leave();
  }
}

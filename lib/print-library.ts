import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { type Pack, packsOf } from "./compose/pack-contents.ts";
import type { BuiltPack, BuiltPrint, PrintRecord } from "./model/built.ts";
import type { SheetFit } from "./model/rule.ts";
import type { SheetView } from "./model/sheet.ts";
import { Stop } from "./model/stop.ts";
import { expectedTexts } from "./print/expected-texts.ts";
import type { Printed, PrintJob } from "./print/print-job.ts";
import { printJobs } from "./print/print-jobs.ts";
import { printStyles } from "./print/print-styles.ts";
import { lastBuild } from "./publish/last-build.ts";
import { filesBelow, sha256 } from "./publish/manifest.ts";
import { browserVersion } from "./setup/browser-version.mjs";
import { paperStyles } from "./site/paper-styles.ts";
import { renderPack } from "./site/render-pack.ts";

const root = fileURLToPath(new URL("../", import.meta.url));
const fonts = join(root, "node_modules/@fontsource/atkinson-hyperlegible-next/files");

/** How sheets and their files are named: `${id}.${format}`. */
export const keyOf = (sheet: SheetView): string => `${sheet.id}.${sheet.format.id}`;
const pdfOf = (sheet: SheetView): string => `pdf/${keyOf(sheet)}.pdf`;
const greyOf = (file: string): string => file.replace(/\.pdf$/, ".grey.pdf");
const thumbnailOf = (file: string): string => file.replace(/^pdf\/(.*)\.pdf$/, "thumbs/$1.png");

/** What printing gave: measurements for the rules, sizes for the site, records for the manifest. */
export type PrintedLibrary = {
  readonly fits: SheetFit[];
  readonly prints: Map<string, BuiltPrint>;
  readonly records: Record<string, PrintRecord>;
  readonly packs: BuiltPack[];
  /** The files that were printed anew. */
  readonly anew: readonly string[];
};

/** All that decides a PDF's bytes besides its sheet: browser, Node's compression, the printing code, styles and the day. */
function printer(css: string, day: string): string {
  const executable = process.env["PUPPETEER_EXECUTABLE_PATH"] ?? "";
  const version =
    process.env["TRAYLEAF_BROWSER_VERSION"] ?? (executable && browserVersion(executable));
  const code = filesBelow(join(root, "lib/print")).map((file) =>
    readFileSync(join(root, "lib/print", file), "utf8"),
  );
  return sha256(
    JSON.stringify([basename(executable), version, process.versions["zlib"], ...code, css, day]),
  );
}

function sheetJob(sheet: SheetView, html: string): PrintJob {
  return {
    file: pdfOf(sheet),
    title: `${sheet.title} (${sheet.identity.card})`,
    subject: sheet.lead,
    keywords: [sheet.systemName, sheet.kind, sheet.format.name, sheet.identity.fingerprint],
    issue: sheet.identity.issue,
    language: sheet.identity.language,
    html,
    paper: [sheet.format.width, sheet.format.height],
    pages: 1,
    texts: expectedTexts(sheet),
    thumbnail: true,
  };
}

function packJob(pack: Pack, fragments: ReadonlyMap<string, string>): PrintJob {
  const a4 = pack.paper === "A4";
  const pages = pack.sheets.length + 1;
  const marks = Array.from({ length: pages }, (_, index) => `pack page ${index + 1} of ${pages}`);
  const [first = "", ...others] = marks;
  const html = renderPack(
    {
      title: pack.title,
      banner: pack.banner,
      defer: pack.defer,
      language: pack.language,
      paperFormat: a4 ? "a4-portrait" : "letter-portrait",
      mark: first,
      entries: pack.entries.map(({ id, title, page }) => ({ anchor: `card-${id}`, title, page })),
    },
    pack.sheets.map((sheet, index) => ({
      anchor: `card-${sheet.id}`,
      mark: others[index] ?? "",
      html: fragments.get(keyOf(sheet)) ?? "",
    })),
  );
  return {
    file: pack.file,
    title: pack.title,
    subject: `${pages - 1} cards with their contents`,
    keywords: [pack.paper, "pack"],
    language: pack.language,
    html,
    paper: a4 ? [210, 297] : [215.9, 279.4],
    pages,
    texts: [],
    textsByPage: [
      [pack.title, first, ...pack.entries.flatMap(({ title, page }) => [title, page])],
      ...pack.sheets.map((sheet, index) => [...expectedTexts(sheet), others[index] ?? ""]),
    ],
    grey: true,
    thumbnail: false,
  };
}

/** Prints what changed since the last build into `staging` and takes the rest from `out`. Stops with 5 when a pack is not as long as it must be. */
export async function printLibrary(
  sheets: readonly SheetView[],
  fragments: ReadonlyMap<string, string>,
  {
    out,
    staging,
    today,
  }: { readonly out: string; readonly staging: string; readonly today: string },
): Promise<PrintedLibrary> {
  const css = `${paperStyles()}${printStyles(join(root, "templates/style"), fonts)}`;
  const by = printer(css, today);
  const before = lastBuild(out);
  const packs = packsOf(sheets);
  const jobs = [
    ...sheets.map((sheet) => sheetJob(sheet, fragments.get(keyOf(sheet)) ?? "")),
    ...packs.map((pack) => packJob(pack, fragments)),
  ];
  const sizes = new Map<string, number>();
  const found = new Map<string, PrintRecord>();
  const put = (file: string, data: Uint8Array): void => {
    mkdirSync(dirname(join(staging, file)), { recursive: true });
    writeFileSync(join(staging, file), data);
  };
  const keep = ({ file, pdf, grey, thumbnail, facts }: Printed, from: string): void => {
    put(file, pdf);
    if (grey) put(greyOf(file), grey);
    sizes.set(greyOf(file), grey?.length ?? 0);
    if (thumbnail) put(thumbnailOf(file), thumbnail);
    sizes.set(file, pdf.length);
    found.set(file, { from, facts });
  };
  const origins = new Map(jobs.map((job) => [job.file, sha256(JSON.stringify([by, job]))]));
  const fresh = jobs.filter((job) => {
    const { file } = job;
    const from = origins.get(file) ?? "";
    const known = before.print(file, from);
    const pdf = known && before.bytes(file);
    const thumbnail = known && job.thumbnail ? before.bytes(thumbnailOf(file)) : undefined;
    const grey = known && job.grey ? before.bytes(greyOf(file)) : undefined;
    if (!known || !pdf || (job.thumbnail && !thumbnail) || (job.grey && !grey)) return true;
    const more = { ...(thumbnail ? { thumbnail } : {}), ...(grey ? { grey } : {}) };
    keep({ file, pdf, facts: known.facts, ...more }, from);
    return false;
  });
  const language = sheets[0]?.identity.language ?? "en";
  await printJobs(fresh, { css, language, day: today }, (printed) =>
    keep(printed, origins.get(printed.file) ?? ""),
  );
  const recordOf = (file: string): PrintRecord => {
    const record = found.get(file);
    if (!record) throw new Stop(5, `${file} was not printed.`, "Run again.");
    return record;
  };
  const fits = sheets.map((sheet) => ({ sheet: keyOf(sheet), ...recordOf(pdfOf(sheet)).facts }));
  const whole = fits.every(
    ({ pages, overflow, missing }) => pages === 1 && overflow.length + missing.length === 0,
  );
  for (const { file, pages } of jobs.slice(sheets.length)) {
    const { facts } = recordOf(file);
    if (!whole) break;
    if (facts.pages !== pages || facts.missing.length > 0)
      throw new Stop(
        5,
        `The pack ${file} has ${facts.pages} pages, wanted ${pages}, and lacks ${facts.missing.length} texts: ${facts.missing.slice(0, 3).join("; ")}.`,
        "Shorten a title in its contents.",
      );
  }
  return {
    fits,
    prints: new Map(
      sheets.map((sheet) => [
        keyOf(sheet),
        { pdfBytes: sizes.get(pdfOf(sheet)) ?? 0, thumb: true },
      ]),
    ),
    records: Object.fromEntries(jobs.map(({ file }) => [file, recordOf(file)])),
    packs: packs.flatMap(({ file, title, system, paper }) =>
      [
        { file, title },
        { file: greyOf(file), title: `${title}, in greys` },
      ].map((one) => ({ ...one, bytes: sizes.get(one.file) ?? 0, system, paper })),
    ),
    anew: fresh.map(({ file }) => file),
  };
}

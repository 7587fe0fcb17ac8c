import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { check } from "./check/check.ts";
import { rules } from "./check/rules.ts";
import { siteDrawings } from "./compose/site-drawings.ts";
import { pictures } from "./draw/pictures.ts";
import { imposeLibrary } from "./impose-library.ts";
import { type BuildOptions, checkLibrary } from "./index.ts";
import type { BuiltPrint } from "./model/built.ts";
import { type Finding, refuses } from "./model/finding.ts";
import { keptMutation } from "./mutate.ts";
import { keyOf, printLibrary } from "./print-library.ts";
import { buildBeside } from "./publish/build-beside.ts";
import { takeLock } from "./publish/lock.ts";
import { writeManifest } from "./publish/manifest.ts";
import { refuseOutput } from "./publish/refuse-output.ts";
import { recover } from "./publish/staging.ts";
import { zipFolder } from "./publish/zip.ts";
import { jsonSchemas } from "./report/json-schemas.ts";
import { reportJson } from "./report/report-json.ts";
import { reportText } from "./report/report-text.ts";
import { runSummary } from "./report/run-summary.ts";
import { hashInputs } from "./setup/unchanged.mjs";
import { renderSheet } from "./site/render-sheet.ts";
import { writeSite } from "./site/write-site.ts";

const root = fileURLToPath(new URL("../", import.meta.url));

function put(folder: string, file: string, data: string | Uint8Array): void {
  mkdirSync(dirname(join(folder, file)), { recursive: true });
  writeFileSync(join(folder, file), data);
}

/** Finishes what an interrupted build left. Another build that runs is told of at once; then the lock is let go until there is something to write, so that reading can be broken off at any moment. */
function recoverAlone(out: string): void {
  const unlock = takeLock(out);
  try {
    recover(out);
  } finally {
    unlock();
  }
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
  refuseOutput(library, out);
  recoverAlone(out);
  const inputs = hashInputs({ root, library, argv: process.argv.slice(3) });
  const { catalogue, derived, sheets, traces, findings, locate, today, waiting } = checkLibrary(
    library,
    options.today,
  );
  lap("read, derive, check, compose");
  const told = (all: readonly Finding[]): number => {
    const located = all.map(locate);
    process.stdout.write(
      options.format === "json"
        ? reportJson(located, library, waiting)
        : reportText(located, { library, colour: options.colour, waiting }),
    );
    return all.some(refuses) ? 1 : 0;
  };
  if (!catalogue || !derived || !sheets || !traces || findings.some(refuses))
    return told(findings) || 1;
  return await buildBeside(out, async (staging, done) => {
    const fragments = new Map(sheets.map((sheet) => [keyOf(sheet), renderSheet(sheet)]));
    lap("sheets as HTML");
    const printed = pdf
      ? await printLibrary(sheets, fragments, { out, staging, today })
      : undefined;
    const onPaper = printed
      ? await imposeLibrary(sheets, catalogue.publisher, { staging, today })
      : [];
    lap(pdf ? "print and read back" : "no PDFs asked for");
    const judged = printed
      ? [
          ...findings.filter(({ rule }) => rules.every(({ id }) => id !== rule)),
          ...check({ catalogue, derived, today, sheets, traces, fits: printed.fits }),
        ]
      : findings;
    if (judged.some(refuses)) return told(judged);
    const prints = printed?.prints ?? new Map<string, BuiltPrint>();
    const pages = await writeSite(
      {
        catalogue,
        derived,
        sheets,
        traces,
        locate,
        fragments,
        findings: judged,
        prints,
        packs: [...(printed?.packs ?? []), ...onPaper],
        rules,
        mutation: keptMutation(library),
        pictures,
        drawings: siteDrawings({ catalogue, derived, pictures, today }, sheets),
        today,
        pdf,
      },
      staging,
    );
    for (const [file, text] of jsonSchemas()) put(staging, `schema/${file}`, text);
    lap("site");
    zipFolder(staging, "trayleaf-site.zip");
    lap("zip");
    const packs = printed?.packs.filter(({ file }) => !file.endsWith(".grey.pdf")).length ?? 0;
    const summary = runSummary(sheets, { out, pages, packs, pdf });
    const report = reportText(judged.map(locate), { library, colour: false }).trimEnd();
    writeManifest(staging, {
      inputs,
      summary: [report, ...summary],
      prints: printed?.records ?? {},
    });
    done();
    const code = told(judged);
    for (const line of summary) say(line);
    if (printed) {
      const files = Object.keys(printed.records).length;
      say(`${printed.anew.length} of ${files} files printed anew.`);
    }
    for (const [stage, seconds] of times) say(`${seconds.toFixed(1).padStart(7)} s  ${stage}`);
    return code;
  });
}

import { readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import type { PrintJob } from "../../../../lib/print/print-job.ts";
import type { Given } from "../bench-jobs.ts";

type Compiler = {
  mapShadow(path: string, content: Buffer): void;
  pdf(card: { mainFileContent: string }, options: { pdfTags: boolean }): Buffer;
};
type Package = { NodeCompiler: { create(options: { workspace: string }): Compiler } };

const [file = "", folder = ""] = process.argv.slice(2);
const { jobs, out }: Given = JSON.parse(readFileSync(file, "utf8"));
const { NodeCompiler }: Package = createRequire(join(folder, "package.json"))(
  "@myriaddreamin/typst-ts-node-compiler",
);
const compiler = NodeCompiler.create({ workspace: out });
const quoted = (text: string): string => JSON.stringify(text).replace(/\\u(\w{4})/g, "\\u{$1}");

/** A card by hand: the same paper, texts and drawings, the texts in three columns. */
function card({ paper: [width, height], texts: [title = "", ...texts], html }: PrintJob): string {
  const drawings = [...html.matchAll(/<svg[\s\S]*?<\/svg>/g)].map(([svg], index) => {
    compiler.mapShadow(join(out, `${index}.svg`), Buffer.from(svg));
    const wide = Math.min(Number(/width="([\d.]+)mm"/.exec(svg)?.[1] ?? 20), width - 20);
    return `image("/${index}.svg", width: ${wide / 2}mm)`;
  });
  return [
    `#set page(width: ${width}mm, height: ${height}mm, margin: 6mm)`,
    '#set text(size: 5pt, lang: "en", hyphenate: false)',
    "#set par(leading: 0.3em)",
    `#heading(level: 1, ${quoted(title)})`,
    `#table(columns: 3, inset: 1pt, ${texts.map(quoted).join(", ")})`,
    `#grid(columns: 8, ${drawings.join(", ")})`,
  ].join("\n");
}

for (const job of jobs) {
  const pdf = compiler.pdf({ mainFileContent: card(job) }, { pdfTags: true });
  writeFileSync(join(out, job.file), pdf);
}

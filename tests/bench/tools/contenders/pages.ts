import type { Instrument } from "../../../../lib/model/instrument.ts";
import { readLibrary } from "../../../../lib/read/read-library.ts";
import type { Page } from "../../../../lib/site/page.ts";
import { instrumentFacts } from "../../../../lib/site/pages/instrument-facts.ts";
import { writePages } from "../../../../lib/site/write-pages.ts";
import { validate } from "../../../../lib/validate/validate.ts";

const registry = {
  head_threads: {},
  drives: {},
  couplings: { "drill-small": { name: "small drill coupling", across: 4_500 } },
};
const voice = {
  language: "en",
  banner: "INVENTED DATA.",
  defer: "The surgeon decides.",
  ask: { role: "Educator", telephone: "1200" },
};

function pageOf(id: string, tool: Instrument): Page {
  const facts = instrumentFacts(tool, registry);
  return {
    path: `instruments/${id}.html`,
    title: tool.name,
    titled: true,
    blocks: [
      {
        kind: "facts",
        facts: [{ name: "Mark on the metal", says: tool.mark }, ...facts].map(({ name, says }) => ({
          name,
          says: [{ text: says }],
        })),
      },
      {
        kind: "table",
        caption: "What is written of it",
        head: ["what", "says", "source"],
        rows: facts.map(({ name, says }) => [
          [{ text: name }],
          [{ text: says }],
          [{ text: `${tool.source?.document}, ${tool.source?.section}` }],
        ]),
      },
    ],
  };
}

/** Writes a page for each instrument of a library. */
export async function buildPages(library: string, out: string): Promise<void> {
  const { definitions, findings } = validate(readLibrary(library).sources);
  const stops = findings.filter(({ place }) => place.file.includes("/"));
  if (stops.length > 0) throw new Error(stops[0]?.message);
  const pages = [...definitions.instrument].map(([id, tool]) => pageOf(id, tool));
  await writePages(pages, voice, out);
}

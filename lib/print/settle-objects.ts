import { Stop } from "../model/stop.ts";
import type { PdfObject, PdfObjects } from "./pdf-objects.ts";

const entries = /\(node\d{8}\) \d+ 0 R/g;
const list = /\/Limits \[\(node\d{8}\) \(node\d{8}\)\]\s\/Names \[[^\]]*\]/;

function dated({ objects, info }: PdfObjects, day: string): PdfObject {
  const stamp = `(D:${day.replaceAll("-", "")}000000+00'00')`;
  let dates = 0;
  const text = (objects.get(info)?.text ?? "").replace(
    /\/(CreationDate|ModDate) \(D:[^)]*\)/g,
    (_, key) => {
      dates++;
      return `/${key} ${stamp}`;
    },
  );
  if (dates !== 2)
    throw new Stop(
      5,
      `Expected two dates in the PDF, got ${dates}.`,
      "Use the Chromium the README names.",
    );
  return { text };
}

/** The lists of structure ids, each as long as it was, with all ids in their order, as a name tree must stand. */
function relisted(lists: readonly string[]): readonly string[] {
  const left = lists.flatMap((text) => text.match(entries) ?? []).sort();
  return lists.map((text) => {
    const own = left.splice(0, text.match(entries)?.length ?? 0);
    const id = (entry = ""): string => entry.slice(0, "(node00000000)".length);
    return text.replace(
      list,
      `/Limits [${id(own[0])} ${id(own.at(-1))}]\n/Names [${own.join(" ")}]`,
    );
  });
}

/** Makes two prints of one page equal: sets the two dates to `day`, and numbers structure ids in the order they appear.
 * Chromium writes the clock and a counter of its own into every file, and lists the ids by that counter. */
export function settleObjects(pdf: PdfObjects, day: string): PdfObjects {
  const order = new Map<string, string>();
  const renumbered = (text: string): string =>
    text.replace(/\(node(\d{8})\)/g, (_, old: string) => {
      const known = order.get(old) ?? String(order.size + 1).padStart(8, "0");
      order.set(old, known);
      return `(node${known})`;
    });
  const objects = new Map<number, PdfObject>();
  for (const [number, { text, stream }] of pdf.objects)
    objects.set(number, stream ? { text, stream } : { text: renumbered(text) });
  objects.set(pdf.info, dated(pdf, day));
  const listing = [...objects].filter(([, { text }]) => list.test(text));
  const texts = relisted(listing.map(([, { text }]) => text));
  for (const [index, [number]] of listing.entries())
    objects.set(number, { text: texts[index] ?? "" });
  return { ...pdf, objects };
}

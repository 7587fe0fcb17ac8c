import { Stop } from "../model/stop.ts";

const names =
  /\/Limits \[\(node\d{8}\) \(node\d{8}\)\]\s\/Names \[((?:\(node\d{8}\) \d+ 0 R ?)+)\]/g;

/** Puts the list of structure ids in their order, as a name tree must stand; the length stays. */
function inOrder(whole: string, list: string): string {
  const pairs = (list.match(/\(node\d{8}\) \d+ 0 R/g) ?? []).sort();
  const id = (pair = ""): string => pair.slice(0, "(node00000000)".length);
  const limits = `[${id(pairs[0])} ${id(pairs.at(-1))}]`;
  return whole.replace(/\[[^\]]*\]/, limits).replace(list, pairs.join(" "));
}

/** Same bytes for the same page: fixes the two dates, and renumbers structure ids in the order they appear, all at equal length.
 * Chromium writes the clock and a counter of its own into every file, and lists the ids by that counter. */
export function normalisePdf(bytes: Uint8Array, day: string): Uint8Array {
  const text = Buffer.from(bytes).toString("latin1");
  const stamp = `D:${day.replaceAll("-", "")}000000+00'00'`;
  let dates = 0;
  const dated = text.replace(
    /\/(CreationDate|ModDate) \((D:[^)]*)\)/g,
    (whole, key: string, old: string) => {
      dates++;
      return old.length === stamp.length ? `/${key} (${stamp})` : whole;
    },
  );
  if (dates !== 2)
    throw new Stop(
      5,
      `Expected two dates in the PDF, got ${dates}`,
      "Use the Chromium the README names.",
    );
  const order = new Map<string, string>();
  const numbered = dated.replace(/node(\d{8})/g, (_, old: string) => {
    const known = order.get(old) ?? String(order.size + 1).padStart(8, "0");
    order.set(old, known);
    return `node${known}`;
  });
  return Uint8Array.from(Buffer.from(numbered.replace(names, inOrder), "latin1"));
}

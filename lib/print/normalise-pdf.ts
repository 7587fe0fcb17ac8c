import { Stop } from "../model/stop.ts";

/** Same bytes for the same page: fixes the two dates and renumbers structure ids, both at equal length.
 * Chromium writes the clock and a counter of its own into every file; nothing else differs between two runs. */
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
  return Uint8Array.from(Buffer.from(numbered, "latin1"));
}

import type { Heading } from "./pdf-book.ts";
import type { PdfObject } from "./pdf-objects.ts";

type Entry = Heading & { readonly number: number; readonly below: Entry[] };

const each = (entries: readonly Entry[]): number =>
  entries.reduce((sum, { below }) => sum + 1 + each(below), 0);

/** Writes headings as a PDF outline under the number `root`; `add` numbers an object, `put` fills it in, `take` gives the new number of an old one. */
export function writeOutline(
  headings: readonly Heading[],
  root: number,
  {
    add,
    put,
    take,
  }: {
    readonly add: () => number;
    readonly put: (number: number, object: PdfObject) => void;
    readonly take: (old: number) => number;
  },
): void {
  const top: Entry[] = [];
  const open: Entry[] = [];
  for (const heading of headings) {
    while (open.length > 0 && (open.at(-1)?.depth ?? 0) >= heading.depth) open.pop();
    const entry = { ...heading, number: add(), below: [] };
    (open.at(-1)?.below ?? top).push(entry);
    open.push(entry);
  }
  const ends = (entries: readonly Entry[]): string =>
    entries.length === 0
      ? ""
      : `/First ${entries[0]?.number} 0 R/Last ${entries.at(-1)?.number} 0 R/Count ${each(entries)}`;
  const write = (entries: readonly Entry[], parent: number): void => {
    for (const [at, { title, page, place, element, number, below }] of entries.entries()) {
      const [before, after] = [entries[at - 1], entries[at + 1]];
      const sides = `${before ? `/Prev ${before.number} 0 R` : ""}${after ? `/Next ${after.number} 0 R` : ""}`;
      put(number, {
        text: `<</Title ${title}/Parent ${parent} 0 R${sides}${ends(below)}/Dest [${take(page)} 0 R ${place}]/SE ${take(element)} 0 R>>`,
      });
      write(below, number);
    }
  };
  write(top, root);
  put(root, { text: `<</Type/Outlines${ends(top)}>>` });
}

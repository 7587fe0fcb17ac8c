import type { SheetView } from "../../model/sheet.ts";
import type { Link } from "../page.ts";
import type { SiteInput } from "../site-input.ts";
import { partLink, systemLink } from "./part-links.ts";
import { partSheets } from "./sheets-of.ts";

const marked = ["instruments", "screws", "plates", "trays"] as const;
export type MarkedKind = (typeof marked)[number];

/** A thing with a mark on its metal: what it is, whose it is, and the sheets that show it. */
export type MarkEntry = {
  readonly mark: string;
  readonly part: Link;
  readonly system: Link;
  readonly sheets: readonly SheetView[];
};

/** Everything of some kinds (of all without them) that bears a mark, in the order of the marks. */
export function markEntries(
  input: SiteInput,
  kinds: readonly MarkedKind[] = marked,
): readonly MarkEntry[] {
  const order = ({ mark, part }: MarkEntry): string => `${mark} ${part.text} ${part.to}`;
  return kinds
    .flatMap((kind) => [...input.catalogue[kind].values()])
    .map(({ id, mark, system }) => ({
      mark,
      part: partLink(input, id),
      system: systemLink(input, system),
      sheets: partSheets(input, id),
    }))
    .sort((a, b) => (order(a) < order(b) ? -1 : 1));
}

import { seenOn } from "../../model/look-alike.ts";
import type { Block } from "../page.ts";
import type { SiteInput } from "../site-input.ts";
import { partLink } from "./part-links.ts";

/** What is easily taken for a part, each with the one feature that tells the two apart; nothing when nothing is. */
export function alikeBlocks(input: SiteInput, id: string): readonly Block[] {
  const doubles = input.derived.doubleNumbers.filter(({ bearers }) =>
    bearers.some((one) => one.id === id),
  );
  const alike = input.derived.lookAlikes.filter(({ a, b }) => a === id || b === id);
  if (alike.length + doubles.length === 0) return [];
  return [
    { kind: "heading", text: "What it is easily taken for", id: "alike" },
    {
      kind: "table",
      caption: "Look-alikes, and how this one is told from each",
      head: ["this one has", "look-alike", "it has"],
      rows: alike.map((pair) => {
        const other = pair.a === id ? pair.b : pair.a;
        return [
          [{ text: seenOn(pair, id) }],
          [partLink(input, other)],
          [{ text: seenOn(pair, other) }],
        ];
      }),
    },
    ...(input.drawings.alike.get(id) ?? []).map((figure) => ({ kind: "figure", figure }) as const),
  ];
}

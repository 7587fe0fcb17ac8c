import type { Block } from "../page.ts";
import type { SiteInput } from "../site-input.ts";
import { partLink } from "./part-links.ts";

/** What is easily taken for a part, each with the one feature of this part that tells the two apart; nothing when nothing is. */
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
      head: ["look-alike", "this one has"],
      rows: alike.map(({ a, b, tell, tellOfB }) => [
        [partLink(input, a === id ? b : a)],
        [{ text: a === id ? tell : (tellOfB ?? tell) }],
      ]),
    },
    ...(input.drawings.alike.get(id) ?? []).map((figure) => ({ kind: "figure", figure }) as const),
  ];
}

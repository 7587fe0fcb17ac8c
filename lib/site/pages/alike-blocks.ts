import type { Block } from "../page.ts";
import type { SiteInput } from "../site-input.ts";

function nameOf({ catalogue }: SiteInput, id: string): string {
  return (
    catalogue.instruments.get(id)?.name ??
    catalogue.screws.get(id)?.called ??
    catalogue.plates.get(id)?.name ??
    id
  );
}

/** What is easily taken for a part, each with the one feature of this part that tells the two apart; nothing when nothing is. */
export function alikeBlocks(input: SiteInput, id: string): Block[] {
  const alike = input.derived.lookAlikes.filter(({ a, b }) => a === id || b === id);
  if (alike.length === 0) return [];
  const links = alike.map(({ a, b, tell, tellOfB }) => ({
    text: nameOf(input, a === id ? b : a),
    note: a === id ? tell : (tellOfB ?? tell),
  }));
  return [
    { kind: "heading", text: "Looks like", id: "alike" },
    { kind: "links", links },
  ];
}

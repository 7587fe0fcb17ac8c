import type { Block } from "../page.ts";

/** A row of links to the headings of a long page, to stand before them. */
export function onThisPage(path: string, blocks: readonly Block[]): Block {
  return {
    kind: "row",
    links: blocks.flatMap((block) =>
      block.kind === "heading" ? [{ text: block.text, to: `${path}#${block.id}` }] : [],
    ),
  };
}

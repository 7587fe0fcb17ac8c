import type { Block, Page } from "../page.ts";
import type { SiteInput } from "../site-input.ts";
import { onThisPage } from "./on-this-page.ts";

/** Every drawn part and figure with the numbers it is drawn from. */
export function galleryPage({ drawings }: SiteInput): Page {
  const path = "gallery/index.html";
  const drawn = drawings.gallery.flatMap(({ title, id, figures }): Block[] => [
    { kind: "heading", text: title, id },
    { kind: "figures", figures },
  ]);
  return {
    path,
    title: "Every drawing and its numbers",
    titled: true,
    blocks: [
      {
        kind: "text",
        text: "Each drawing is made from the numbers beside it; another number makes another drawing. Bone is not anatomy, lengths are examples from the rack.",
      },
      onThisPage(path, drawn),
      ...drawn,
    ],
  };
}

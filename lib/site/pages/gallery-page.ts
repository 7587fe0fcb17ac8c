import type { Block, Page } from "../page.ts";
import type { SiteInput } from "../site-input.ts";

/** Every drawn part and figure with the numbers it is drawn from. */
export function galleryPage({ drawings }: SiteInput): Page {
  return {
    path: "gallery/index.html",
    title: "Every drawing and its numbers",
    titled: true,
    blocks: [
      {
        kind: "text",
        text: "Each drawing is made from the numbers beside it; another number makes another drawing. Bone is not anatomy, lengths are examples from the rack.",
      },
      ...drawings.gallery.flatMap(({ title, id, figures }): Block[] => [
        { kind: "heading", text: title, id },
        { kind: "figures", figures },
      ]),
    ],
  };
}

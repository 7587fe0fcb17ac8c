import { known } from "../../model/catalogue.ts";
import type { Block, Link, Page } from "../page.ts";
import type { SiteInput } from "../site-input.ts";
import { cardsBlocks } from "./card-entries.ts";
import { packLinks } from "./card-pages.ts";
import { instrumentLink, plateLink, procedureLink, screwLink, trayLink } from "./part-links.ts";

/** A page for each system: how it is known, its packs and cards, all its parts, its sources. */
export function systemPages(input: SiteInput): readonly Page[] {
  const { catalogue, sheets } = input;
  return [...catalogue.systems.values()].map((system): Page => {
    const list = (
      text: string,
      id: string,
      parts: ReadonlyMap<string, { readonly id: string; readonly system: string }>,
      link: (input: SiteInput, id: string) => Link,
    ): readonly Block[] => [
      { kind: "heading", text, id },
      {
        kind: "links",
        links: [...parts.values()]
          .filter((part) => part.system === system.id)
          .map((part) => link(input, part.id)),
      },
    ];
    const packs = packLinks(input, system.id);
    return {
      path: `systems/${system.id}.html`,
      title: `${system.name}, generation ${system.generation}`,
      titled: true,
      blocks: [
        {
          kind: "facts",
          facts: [
            { name: "Maker", says: [{ text: system.maker }] },
            { name: "Sizes", says: [{ text: system.sizes }] },
            { name: "How the generation shows", says: [{ text: system.generation_mark }] },
            { name: "Tray revision", says: [{ text: system.tray_revision }] },
          ],
        },
        ...(packs.length > 0
          ? [
              { kind: "heading", text: "All its cards in one PDF", id: "packs" } as const,
              { kind: "links", links: packs } as const,
            ]
          : []),
        ...cardsBlocks(
          input,
          { id: "cards", text: "What to hand over, and lengths" },
          sheets.filter(
            (sheet) =>
              sheet.system === system.id && (sheet.kind === "pairing" || sheet.kind === "lengths"),
          ),
        ),
        ...cardsBlocks(
          input,
          { id: "wall-and-pocket", text: "For the wall and the pocket" },
          sheets.filter(
            (sheet) =>
              sheet.system === system.id && (sheet.kind === "poster" || sheet.kind === "pocket"),
          ),
        ),
        ...list("Plates", "plates", catalogue.plates, plateLink),
        ...list("Trays", "trays", catalogue.trays, trayLink),
        ...list("Screws", "screws", catalogue.screws, screwLink),
        ...list("Instruments", "instruments", catalogue.instruments, instrumentLink),
        ...list("Orders of work", "procedures", catalogue.procedures, procedureLink),
        { kind: "heading", text: "Sources", id: "sources" },
        {
          kind: "links",
          links: system.documents.map((id) => {
            const { title, issue, date } = known(catalogue.documents, id);
            return { text: `${title}, issue ${issue}, ${date}`, to: `documents/${id}.html` };
          }),
        },
      ],
    };
  });
}

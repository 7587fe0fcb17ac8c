import type { Link, Page } from "../page.ts";
import type { SiteInput } from "../site-input.ts";
import { alikeBlocks } from "./alike-blocks.ts";
import { cardsBlock } from "./card-pages.ts";

/** A page for each plate (with a map for every length) and each tray. */
export function placePages(input: SiteInput): Page[] {
  const { catalogue, derived, sheets } = input;
  const plates = [...catalogue.plates.values()].map((plate): Page => {
    const laid = derived.plates.filter((one) => one.plate === plate.id);
    const maps = new Set(laid.map(({ id }) => `${plate.system}-plate-${id}`));
    return {
      path: `plates/${plate.id}.html`,
      title: `${plate.name}${plate.side === "none" ? "" : `, ${plate.side}`}`,
      blocks: [
        {
          kind: "text",
          text: `Mark on the metal: ${plate.mark}. Lengths: ${laid.map(({ holesInRow }) => `${holesInRow} holes`).join(", ")}.`,
        },
        ...alikeBlocks(input, plate.id),
        ...cardsBlock(input, (sheet) => maps.has(sheet.id)),
        ...cardsBlock(input, (sheet) => sheet.kind === "pairing" && sheet.system === plate.system),
      ],
    };
  });
  const trays = [...catalogue.trays.values()].map((tray): Page => {
    const cards = sheets
      .filter((sheet) => sheet.kind === "tray" && sheet.origin === tray.file)
      .map(({ id }) => id);
    return {
      path: `trays/${tray.id}.html`,
      title: tray.name,
      blocks: [
        { kind: "text", text: `Mark: ${tray.mark}. Revision ${tray.revision}.` },
        ...cardsBlock(input, ({ id }) => cards.includes(id)),
      ],
    };
  });
  const systems = [...catalogue.systems.values()].map((system): Page => {
    const of = <T extends { readonly system: string; readonly id: string }>(
      map: ReadonlyMap<string, T>,
      folder: string,
      name: (one: T) => string,
    ): Link[] =>
      [...map.values()]
        .filter((one) => one.system === system.id)
        .map((one) => ({ text: name(one), to: `${folder}/${one.id}.html` }));
    return {
      path: `systems/${system.id}.html`,
      title: `${system.name}, generation ${system.generation}`,
      blocks: [
        { kind: "text", text: `${system.maker}. ${system.sizes}. ${system.generation_mark}` },
        {
          kind: "links",
          links: input.packs
            .filter((pack) => pack.system === system.id)
            .map(({ title, file }) => ({ text: title, to: file })),
        },
        ...cardsBlock(
          input,
          (sheet) =>
            sheet.system === system.id && (sheet.kind === "pairing" || sheet.kind === "lengths"),
        ),
        { kind: "heading", text: "Plates", id: "plates" },
        {
          kind: "links",
          links: of(catalogue.plates, "plates", ({ name, side }) =>
            side === "none" ? name : `${name}, ${side}`,
          ),
        },
        { kind: "heading", text: "Screws", id: "screws" },
        { kind: "links", links: of(catalogue.screws, "screws", ({ called }) => called) },
        { kind: "heading", text: "Instruments", id: "instruments" },
        { kind: "links", links: of(catalogue.instruments, "instruments", ({ name }) => name) },
        { kind: "heading", text: "Trays", id: "trays" },
        { kind: "links", links: of(catalogue.trays, "trays", ({ name }) => name) },
        { kind: "heading", text: "Sources", id: "sources" },
        {
          kind: "links",
          links: system.documents.flatMap((id) => {
            const document = catalogue.documents.get(id);
            return document
              ? [{ text: `${document.title}, issue ${document.issue}, ${document.date}` }]
              : [];
          }),
        },
      ],
    };
  });
  const procedures = [...catalogue.procedures.values()].map((procedure): Page => {
    const cards = sheets
      .filter((sheet) => sheet.kind === "steps" && sheet.origin === procedure.file)
      .map(({ id }) => id);
    return {
      path: `procedures/${procedure.id}.html`,
      title: procedure.name,
      blocks: cardsBlock(input, ({ id }) => cards.includes(id)),
    };
  });
  return [...plates, ...trays, ...systems, ...procedures];
}

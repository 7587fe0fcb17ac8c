import type { Catalogue } from "../../model/catalogue.ts";
import type { Defined } from "../../model/definition.ts";
import type { Plate } from "../../model/plate.ts";
import type { PlateMapView } from "../../model/sheet.ts";
import type { Link, Page } from "../page.ts";
import type { SiteInput } from "../site-input.ts";
import { alikeBlocks } from "./alike-blocks.ts";
import { cardsBlocks } from "./card-entries.ts";
import { placesOf, plateLink, procedureLink, systemLink } from "./part-links.ts";
import { plateFamily } from "./plate-family.ts";
import { sheetsFrom } from "./sheets-of.ts";

/** The other side of a sided plate. */
function counterpart({ plates }: Catalogue, plate: Defined<Plate>): string | undefined {
  if ("mirror_of" in plate) return plate.mirror_of;
  return [...plates.values()].find((one) => "mirror_of" in one && one.mirror_of === plate.id)?.id;
}

/** The map of a plate's longest variant, which has every hole. */
function longest({ sheets }: SiteInput, plate: Defined<Plate>): PlateMapView | undefined {
  return sheets
    .flatMap((sheet) => (sheet.kind === "plate-map" && sheet.origin === plate.file ? [sheet] : []))
    .sort((a, b) => a.table.length - b.table.length)
    .at(-1);
}

/** A page for each plate: its other side, what its holes take, which end lies where, a map for every length. */
export function platePages(input: SiteInput): readonly Page[] {
  const { catalogue, sheets } = input;
  return [...catalogue.plates.values()].map((plate): Page => {
    const other = counterpart(catalogue, plate);
    const family = plateFamily(catalogue, plate);
    const map = longest(input, plate);
    const side = input.drawings.plates.get(plate.id);
    const places = placesOf(input, plate.id);
    const procedures: readonly Link[] = [...catalogue.procedures.values()]
      .filter(({ families }) => families.includes(family))
      .map(({ id }) => procedureLink(input, id));
    const facts = [
      { name: "Mark on the metal", says: [{ text: plate.mark }] },
      {
        name: "Side",
        says: [{ text: plate.side === "none" ? "no side" : plate.side.toUpperCase() }],
      },
      ...(other ? [{ name: "Other side", says: [plateLink(input, other)] }] : []),
      ...(map ? [{ name: "How it lies", says: map.orientation.map((text) => ({ text })) }] : []),
      { name: "System", says: [systemLink(input, plate.system)] },
      ...(places.length > 0 ? [{ name: "Lies in", says: places }] : []),
      ...(procedures.length > 0 ? [{ name: "Order of work", says: procedures }] : []),
    ];
    const pairing = sheets.filter(
      (sheet) => sheet.kind === "pairing" && sheet.system === plate.system,
    );
    return {
      path: `plates/${plate.id}.html`,
      title: plateLink(input, plate.id).text,
      titled: true,
      blocks: [
        ...(map ? [{ kind: "figure", figure: map.map } as const] : []),
        ...(side ? [{ kind: "figure", figure: side } as const] : []),
        { kind: "facts", facts },
        ...cardsBlocks(
          input,
          { id: "maps", text: "Its maps, one for each length" },
          sheetsFrom(input, plate.file),
        ),
        ...(map
          ? [
              { kind: "heading", text: "What each hole takes", id: "holes" } as const,
              {
                kind: "table",
                caption: `The holes of the longest, ${map.title}`,
                head: ["hole", "kind", "takes"],
                rows: map.table.map(({ label, kind, takes }) => [
                  [{ text: label }],
                  [{ text: kind }],
                  [{ text: takes }],
                ]),
              } as const,
            ]
          : []),
        ...alikeBlocks(input, plate.id),
        ...cardsBlocks(input, { id: "pairing", text: "What to hand over for its screws" }, pairing),
      ],
    };
  });
}

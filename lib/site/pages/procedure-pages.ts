import { known } from "../../model/catalogue.ts";
import type { Block, Page } from "../page.ts";
import type { SiteInput } from "../site-input.ts";
import { cardsBlocks } from "./card-entries.ts";
import { plateLink, screwLink, systemLink, techniqueLink } from "./part-links.ts";
import { plateFamily } from "./plate-family.ts";
import { sheetsFrom } from "./sheets-of.ts";
import { stepBlocks } from "./step-blocks.ts";

/** The back table from either side of it. */
function tableBlocks({ drawings }: SiteInput, procedure: string): readonly Block[] {
  const tables = drawings.tables.get(procedure) ?? [];
  if (tables.length === 0) return [];
  return [
    { kind: "heading", text: "Back table in order of use", id: "table" },
    {
      kind: "text",
      text: "One way to lay the table: what is asked for first lies first. A chequered strip marks what looks like something else on it.",
    },
    ...tables.map((figure) => ({ kind: "figure", figure }) as const),
  ];
}

/** A page for each procedure: its step card, its plates, its screws and techniques, its order of work in words. */
export function procedurePages(input: SiteInput): readonly Page[] {
  const { catalogue } = input;
  return [...catalogue.procedures.values()].map((procedure): Page => {
    const plates = [...catalogue.plates.values()].filter((plate) =>
      procedure.families.includes(plateFamily(catalogue, plate)),
    );
    const fills = procedure.steps.flatMap((step) => (step.fills ? [step.fills] : []));
    return {
      path: `procedures/${procedure.id}.html`,
      title: procedure.name,
      titled: true,
      blocks: [
        { kind: "text", text: "The surgeon may change this order." },
        {
          kind: "facts",
          facts: [
            { name: "Plates", says: plates.map(({ id }) => plateLink(input, id)) },
            { name: "System", says: [systemLink(input, procedure.system)] },
          ],
        },
        ...cardsBlocks(input, { id: "cards", text: "Its card" }, sheetsFrom(input, procedure.file)),
        ...stepBlocks(input, procedure),
        ...tableBlocks(input, procedure.id),
        { kind: "heading", text: "Screws in this order", id: "screws" },
        {
          kind: "table",
          caption: "Which screw goes where, and how",
          head: ["screw", "hole", "technique"],
          rows: fills.map(({ screw, zone, region, recipe }) => [
            [screwLink(input, screw)],
            [{ text: `${known(catalogue.zones, zone).name}, ${region}` }],
            [techniqueLink(input, recipe)],
          ]),
        },
      ],
    };
  });
}

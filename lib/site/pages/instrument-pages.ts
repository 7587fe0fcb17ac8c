import { known } from "../../model/catalogue.ts";
import type { Defined } from "../../model/definition.ts";
import type { Instrument } from "../../model/instrument.ts";
import type { Block, Page } from "../page.ts";
import type { SiteInput } from "../site-input.ts";
import { alikeBlocks } from "./alike-blocks.ts";
import { cardsBlocks } from "./card-entries.ts";
import { instrumentFacts } from "./instrument-facts.ts";
import { instrumentLink, placesOf, screwLink, systemLink, techniqueLink } from "./part-links.ts";
import { instrumentSheets } from "./sheets-of.ts";

type Tool = Defined<Instrument>;

function usesOf(input: SiteInput, tool: Tool): readonly Block[] {
  const { catalogue, derived } = input;
  const chains = derived.chains.filter(({ links }) =>
    links.some(({ instrument }) => instrument === tool.id),
  );
  return [
    { kind: "heading", text: "What it is for", id: "for" },
    chains.length > 0
      ? {
          kind: "table",
          caption: "Screws it is handed over for",
          head: ["screw", "technique", "hole"],
          rows: chains.map(({ screw, recipe, zone }) => [
            [screwLink(input, screw)],
            [techniqueLink(input, recipe)],
            [{ text: known(catalogue.zones, zone).name }],
          ]),
        }
      : { kind: "text", text: "It belongs to no single screw." },
  ];
}

const tried: readonly Instrument["kind"][] = [
  "drill",
  "threaded-sleeve",
  "plain-guide",
  "reduction-insert",
];

function trapsOf(input: SiteInput, { id, kind }: Tool): readonly Block[] {
  if (!tried.includes(kind)) return [];
  const traps = input.derived.drillTraps.filter(
    ({ drill, through }) => drill === id || through === id,
  );
  const heading: Block = {
    kind: "heading",
    text: kind === "drill" ? "What it wrongly passes" : "What wrongly passes it",
    id: "passes",
  };
  if (traps.length === 0) {
    const text =
      kind === "drill"
        ? "It goes through no sleeve, guide or insert of its system but its own."
        : "No drill of its system goes through it but its own.";
    return [heading, { kind: "text", text }];
  }
  return [
    heading,
    {
      kind: "table",
      caption: "Goes through, and is wrong",
      head: ["drill", "goes through", "which is made for"],
      rows: traps.map(({ drill, through, belongs }) => [
        [instrumentLink(input, drill)],
        [instrumentLink(input, through)],
        belongs.length > 0
          ? belongs.map((one) => instrumentLink(input, one))
          : [{ text: "no drill of this system" }],
      ]),
    },
  ];
}

/** A page for each instrument: what it looks like, what it is for, what it wrongly passes, what it is taken for, its cards. */
export function instrumentPages(input: SiteInput): readonly Page[] {
  const { catalogue, pictures } = input;
  return [...catalogue.instruments.values()].map((tool): Page => {
    const places = placesOf(input, tool.id);
    const figure = pictures.wholeInstrument(`tool-${tool.id}`, tool, catalogue.interfaces, 150);
    const facts = [
      { name: "Mark on the metal", says: [{ text: tool.mark }] },
      ...instrumentFacts(tool, catalogue.interfaces).map(({ name, says }) => ({
        name,
        says: [{ text: says }],
      })),
      { name: "System", says: [systemLink(input, tool.system)] },
      ...(places.length > 0 ? [{ name: "Lies in", says: places }] : []),
    ];
    return {
      path: `instruments/${tool.id}.html`,
      title: tool.name,
      titled: true,
      blocks: [
        { kind: "figure", figure },
        { kind: "facts", facts },
        ...(tool.note ? [{ kind: "text", text: tool.note } as const] : []),
        ...usesOf(input, tool),
        ...trapsOf(input, tool),
        ...alikeBlocks(input, tool.id),
        ...cardsBlocks(
          input,
          { id: "cards", text: "Cards that show it" },
          instrumentSheets(input, tool.id),
        ),
      ],
    };
  });
}

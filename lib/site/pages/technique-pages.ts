import { known } from "../../model/catalogue.ts";
import type { Page } from "../page.ts";
import type { SiteInput } from "../site-input.ts";
import { cardsBlocks } from "./card-entries.ts";
import { screwLink, systemLink } from "./part-links.ts";
import { sheetsFrom } from "./sheets-of.ts";
import { stepBlocks } from "./step-blocks.ts";

/** A page for each technique: its steps in words, the screws and holes it is for, its step cards. */
export function techniquePages(input: SiteInput): readonly Page[] {
  const { catalogue, derived } = input;
  return [...catalogue.recipes.values()].map((recipe): Page => {
    const chains = derived.chains.filter((chain) => chain.recipe === recipe.id);
    const from = recipe.source && catalogue.documents.get(recipe.source.document);
    return {
      path: `techniques/${recipe.id}.html`,
      title: recipe.name,
      titled: true,
      blocks: [
        {
          kind: "text",
          text: recipe.default
            ? "The surgeon may change this order."
            : "Only when the surgeon asks for it. The surgeon may change this order.",
        },
        ...cardsBlocks(
          input,
          { id: "cards", text: "Step cards, one for each screw" },
          sheetsFrom(input, recipe.file),
        ),
        ...stepBlocks(input, recipe),
        { kind: "heading", text: "Screws and holes", id: "screws" },
        chains.length > 0
          ? {
              kind: "table",
              caption: "Where this technique is used",
              head: ["screw", "hole", "system"],
              rows: chains.map(({ screw, zone, system }) => [
                [screwLink(input, screw)],
                [{ text: known(catalogue.zones, zone).name }],
                [systemLink(input, system)],
              ]),
            }
          : { kind: "text", text: "No screw of this library is put in this way." },
        ...(from
          ? ([
              { kind: "text", text: `Source: ${from.title}, issue ${from.issue}, ${from.date}.` },
            ] as const)
          : []),
      ],
    };
  });
}

import { known } from "../../model/catalogue.ts";
import type { Chain } from "../../model/chain.ts";
import { mm } from "../../model/measure.ts";
import type { Block, Link, Page } from "../page.ts";
import type { SiteInput } from "../site-input.ts";
import { alikeBlocks } from "./alike-blocks.ts";
import { cardsBlock } from "./card-pages.ts";

const screwLink = ({ catalogue }: SiteInput, id: string): Link => ({
  text: known(catalogue.screws, id).called,
  to: `screws/${id}.html`,
});
const toolLink = ({ catalogue }: SiteInput, id: string): Link => ({
  text: known(catalogue.instruments, id).name,
  to: `instruments/${id}.html`,
});

function reasons(input: SiteInput, chain: Chain): Block[] {
  const { catalogue } = input;
  const title = `${known(catalogue.recipes, chain.recipe).name}, in ${known(catalogue.zones, chain.zone).name}`;
  const rows = chain.links.flatMap((link) => {
    const none: Link = { text: "none in this system" };
    const chosen: Link[] = [
      { text: link.role },
      link.instrument ? toolLink(input, link.instrument) : none,
      { text: "chosen: meets every criterion" },
    ];
    const others = link.verdicts
      .filter(({ instrument }) => instrument !== link.instrument)
      .map(({ instrument, because }): Link[] => [
        { text: link.role },
        toolLink(input, instrument),
        { text: `falls out: ${because.join("; ")}` },
      ]);
    return [chosen, ...others];
  });
  return [
    { kind: "heading", text: title, id: chain.id },
    {
      kind: "table",
      caption: `Every candidate for ${title} and why it was chosen or fell out`,
      head: ["part", "candidate", "reason"],
      rows,
    },
  ];
}

/** A page for each screw: its chains with all reasons, where it goes wrongly, its cards. */
export function screwPages(input: SiteInput): Page[] {
  const { catalogue, derived, pictures } = input;
  return [...catalogue.screws.values()].map((screw): Page => {
    const chains = derived.chains.filter((chain) => chain.screw === screw.id);
    const traps = derived.screwTraps.filter((trap) => trap.screw === screw.id);
    const table = derived.lengthTables.get(screw.id);
    const first = table?.readings.flatMap(({ answer }) =>
      answer.kind === "next" ? [answer.length] : [],
    )[0];
    return {
      path: `screws/${screw.id}.html`,
      title: screw.called,
      blocks: [
        ...(first === undefined
          ? []
          : [
              {
                kind: "figure",
                figure: pictures.screw(`screw-${screw.id}`, screw, catalogue.interfaces, first),
              } as const,
            ]),
        {
          kind: "text",
          text: `${screw.name}, mark ${screw.mark}. Thread ${mm(screw.major)} mm, core ${mm(screw.core)} mm. Pilot drill ${mm(screw.pilot)}.`,
        },
        ...chains.flatMap((chain) => reasons(input, chain)),
        { kind: "heading", text: "Where it goes in and is wrong", id: "traps" },
        traps.length > 0
          ? {
              kind: "table",
              caption: "Holes this screw passes and is not for",
              head: ["hole", "head"],
              rows: traps.map(({ zone, head }) => [
                { text: known(catalogue.zones, zone).name },
                { text: head === "lodges" ? "lodges there" : "falls through" },
              ]),
            }
          : { kind: "text", text: "No hole in this library lets it through wrongly." },
        ...alikeBlocks(input, screw.id),
        ...cardsBlock(
          input,
          (sheet) =>
            sheet.system === screw.system &&
            (sheet.kind === "pairing" ||
              (sheet.kind === "steps" && sheet.id.endsWith(screw.id)) ||
              sheet.kind === "lengths"),
        ),
      ],
    };
  });
}

/** A page for each instrument: what it is for, what it looks like, what it wrongly passes. */
export function instrumentPages(input: SiteInput): Page[] {
  const { catalogue, derived, pictures } = input;
  return [...catalogue.instruments.values()].map((tool): Page => {
    const chains = derived.chains.filter(({ links }) =>
      links.some(({ instrument }) => instrument === tool.id),
    );
    const passes = derived.drillTraps.filter(
      ({ drill, through }) => drill === tool.id || through === tool.id,
    );
    const trays = [...catalogue.trays.values()].flatMap((tray) =>
      tray.slots
        .filter((slot) => slot.holds === "instrument" && slot.instrument === tool.id)
        .map(({ slot }) => ({ text: `${tray.name}, slot ${slot}`, to: `trays/${tray.id}.html` })),
    );
    const blocks: Block[] = [
      {
        kind: "figure",
        figure: pictures.wholeInstrument(`tool-${tool.id}`, tool, catalogue.interfaces, 150),
      },
      { kind: "text", text: `Mark on the metal: ${tool.mark}.` },
      { kind: "heading", text: "What it is for", id: "for" },
      chains.length > 0
        ? {
            kind: "table",
            caption: "Chains this instrument belongs to",
            head: ["screw", "technique", "hole"],
            rows: chains.map((chain) => [
              screwLink(input, chain.screw),
              { text: known(catalogue.recipes, chain.recipe).name },
              { text: known(catalogue.zones, chain.zone).name },
            ]),
          }
        : { kind: "text", text: "General use: it belongs to no single screw." },
      { kind: "heading", text: "What it wrongly passes", id: "passes" },
      passes.length > 0
        ? {
            kind: "table",
            caption: "Goes in, and is wrong",
            head: ["drill", "passes", "made for"],
            rows: passes.map(({ drill, through, belongs }) => [
              toolLink(input, drill),
              toolLink(input, through),
              {
                text:
                  belongs.map((id) => known(catalogue.instruments, id).name).join(", ") ||
                  "no drill of this system",
              },
            ]),
          }
        : { kind: "text", text: "Nothing in its system." },
      ...alikeBlocks(input, tool.id),
      ...(trays.length > 0
        ? [
            { kind: "heading", text: "Where it lies", id: "trays" } as const,
            { kind: "links", links: trays } as const,
          ]
        : []),
      ...cardsBlock(input, (sheet) => sheet.kind === "pairing" && sheet.system === tool.system),
    ];
    return { path: `instruments/${tool.id}.html`, title: tool.name, blocks };
  });
}

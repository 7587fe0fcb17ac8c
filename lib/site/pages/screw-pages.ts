import { known } from "../../model/catalogue.ts";
import type { Chain } from "../../model/chain.ts";
import type { Defined } from "../../model/definition.ts";
import { mm, nm } from "../../model/measure.ts";
import type { Screw } from "../../model/screw.ts";
import type { Block, Link, Page } from "../page.ts";
import type { SiteInput } from "../site-input.ts";
import { alikeBlocks } from "./alike-blocks.ts";
import { cardsBlocks } from "./card-entries.ts";
import { instrumentLink, placesOf, systemLink, techniqueLink } from "./part-links.ts";
import { screwSheets } from "./sheets-of.ts";

function reasons(input: SiteInput, chain: Chain): readonly Block[] {
  const { catalogue } = input;
  const hole = known(catalogue.zones, chain.zone).name;
  const title = `${known(catalogue.recipes, chain.recipe).name}, in ${hole}`;
  const rows = chain.links.flatMap(({ role, instrument: chosen, verdicts }) => [
    [
      [{ text: role.replaceAll("-", " ") }],
      [chosen ? instrumentLink(input, chosen) : { text: "none in this system" }],
      [{ text: chosen ? "chosen: meets every criterion" : "not needed here" }],
    ],
    ...verdicts
      .filter(({ instrument }) => instrument !== chosen)
      .map(({ instrument, because }) => [
        [{ text: role.replaceAll("-", " ") }],
        [instrumentLink(input, instrument)],
        [{ text: `falls out: ${because.join("; ")}` }],
      ]),
  ]);
  return [
    { kind: "heading", text: title, id: chain.id },
    ...(input.drawings.chains.get(chain.id) ?? []).map((figure) => {
      const { name } = known(input.catalogue.recipes, chain.recipe);
      return { kind: "figure", figure: { ...figure, title: `${figure.title}: ${name}` } } as const;
    }),
    {
      kind: "table",
      caption: `Every candidate for ${title} and why it was chosen or fell out`,
      head: ["part", "candidate", "reason"],
      rows,
    },
  ];
}

function handOver(input: SiteInput, chains: readonly Chain[]): readonly Block[] {
  const { catalogue } = input;
  const needed = (chain: Chain): readonly Link[] =>
    chain.links.flatMap(({ instrument, required }) =>
      instrument
        ? [{ ...instrumentLink(input, instrument), ...(required ? {} : { note: "if asked" }) }]
        : [],
    );
  return [
    { kind: "heading", text: "What to hand over, in order", id: "hand-over" },
    chains.length > 0
      ? {
          kind: "table",
          caption: "Instruments in hand-over order",
          head: ["technique", "hole", "instruments"],
          rows: chains.map((chain) => [
            [techniqueLink(input, chain.recipe)],
            [{ text: known(catalogue.zones, chain.zone).name }],
            needed(chain),
          ]),
        }
      : { kind: "text", text: "No hole of this library is for it." },
  ];
}

function trapsOf(input: SiteInput, screw: string): readonly Block[] {
  const { derived, catalogue } = input;
  const traps = derived.screwTraps.filter((trap) => trap.screw === screw);
  return [
    { kind: "heading", text: "Where it goes in and is wrong", id: "traps" },
    traps.length > 0
      ? {
          kind: "table",
          caption: "Holes this screw passes and is not for",
          head: ["hole", "system", "head"],
          rows: traps.map(({ zone, zoneSystem, head }) => [
            [{ text: known(catalogue.zones, zone).name }],
            [systemLink(input, zoneSystem)],
            [{ text: head === "lodges" ? "lodges there" : "falls through" }],
          ]),
        }
      : { kind: "text", text: "No hole in this library lets it through wrongly." },
  ];
}

/** The reading-to-length table as the length sheet words it. */
function lengthsOf({ sheets, drawings }: SiteInput, screw: string): readonly Block[] {
  const column = sheets
    .flatMap((sheet) => (sheet.kind === "lengths" ? sheet.columns : []))
    .find((one) => one.screw === screw);
  if (!column) return [];
  return [
    { kind: "heading", text: "Reading to next length", id: "lengths" },
    { kind: "text", text: column.policy },
    ...(drawings.screws.get(screw) ?? []).map((figure) => ({ kind: "figure", figure }) as const),
    ...(column.entries.length > 0
      ? [
          {
            kind: "table",
            caption: "Each gauge reading and the next length in this rack; the surgeon decides",
            head: ["reading", "next length"],
            rows: column.entries.map(({ reads, next, dead, words }) => [
              [{ text: reads }],
              [{ text: dead ? `none (${words})` : next }],
            ]),
          } as const,
        ]
      : []),
  ];
}

/** The screw in a length from the middle of its rack. */
function pictureOf({ pictures, catalogue, derived }: SiteInput, screw: Defined<Screw>): Block[] {
  const lengths = (derived.lengthTables.get(screw.id)?.readings ?? []).flatMap(({ answer }) =>
    answer.kind === "next" ? [answer.length] : [],
  );
  const length = lengths[Math.floor(lengths.length / 2)];
  if (length === undefined) return [];
  const figure = pictures.screw(`screw-${screw.id}`, screw, catalogue.interfaces, length);
  return [{ kind: "figure", figure }];
}

/** A page for each screw: what to hand over, where it goes wrongly, its lengths, every reason, its cards. */
export function screwPages(input: SiteInput): readonly Page[] {
  const { catalogue, derived } = input;
  return [...catalogue.screws.values()].map((screw): Page => {
    const chains = derived.chains.filter((chain) => chain.screw === screw.id);
    const places = placesOf(input, screw.id);
    const facts = [
      { name: "Name", says: [{ text: screw.name }] },
      { name: "Mark on the metal", says: [{ text: screw.mark }] },
      {
        name: "Thread",
        says: [
          { text: `${mm(screw.major)} mm, core ${mm(screw.core)} mm, pitch ${mm(screw.pitch)} mm` },
        ],
      },
      { name: "Pilot drill", says: [{ text: `${mm(screw.pilot)} mm` }] },
      {
        name: "Drive",
        says: [{ text: catalogue.interfaces.drives[screw.drive]?.name ?? screw.drive }],
      },
      ...(screw.torque === undefined
        ? []
        : [{ name: "Torque limit", says: [{ text: `${nm(screw.torque)} N·m` }] }]),
      { name: "System", says: [systemLink(input, screw.system)] },
      ...(places.length > 0 ? [{ name: "Lies in", says: places }] : []),
    ];
    return {
      path: `screws/${screw.id}.html`,
      title: screw.called,
      titled: true,
      blocks: [
        ...pictureOf(input, screw),
        { kind: "facts", facts },
        ...handOver(input, chains),
        ...trapsOf(input, screw.id),
        ...alikeBlocks(input, screw.id),
        ...cardsBlocks(
          input,
          { id: "cards", text: "Cards that show it" },
          screwSheets(input, screw.id),
        ),
        ...lengthsOf(input, screw.id),
        ...chains.flatMap((chain) => reasons(input, chain)),
      ],
    };
  });
}

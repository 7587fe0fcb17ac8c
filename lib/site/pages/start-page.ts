import { isOver } from "../../model/site.ts";
import type { Door, Link, Page } from "../page.ts";
import type { SiteInput } from "../site-input.ts";
import { cardPath, cardTitle } from "./card-entries.ts";
import { packLinks } from "./card-pages.ts";
import {
  instrumentLink,
  plateLink,
  procedureLink,
  screwLink,
  systemLink,
  trayLink,
} from "./part-links.ts";

type Part = { readonly id: string; readonly system: string };

/** Parts as links, a group for each system, those of no system last. */
function bySystem(
  input: SiteInput,
  parts: ReadonlyMap<string, Part>,
  link: (input: SiteInput, id: string) => Link,
  what = "",
): Door["groups"] {
  const all = [...parts.values()];
  const systems = [
    ...new Set([...input.catalogue.systems.keys(), ...all.map((one) => one.system)]),
  ];
  return systems.flatMap((system) => {
    const own = all.filter((part) => part.system === system);
    if (own.length === 0) return [];
    const name = `${systemLink(input, system).text}${what}`;
    return [{ name, links: own.map(({ id }) => link(input, id)) }];
  });
}

/** A drill, a plate and a tray of the library, drawn to tell the doors apart. */
function pictures({ catalogue, derived, pictures: drawn, sheets }: SiteInput) {
  const drill = [...catalogue.instruments.values()].find(({ kind }) => kind === "drill");
  const [plate] = derived.plates;
  return {
    hand: drill ? drawn.wholeInstrument("door-hand", drill, catalogue.interfaces, 90) : undefined,
    plate: plate ? drawn.plateOutline("door-plate", plate, 90) : undefined,
    tray: sheets.flatMap((sheet) => (sheet.kind === "tray" ? [sheet.map] : []))[0],
  };
}

/** The cases, those that are over marked so. */
function caseLinks({ catalogue, sheets, today }: SiteInput): readonly Link[] {
  const over = new Set(
    [...catalogue.cases.values()].flatMap((one) => (isOver(one, today) ? [one.code] : [])),
  );
  const cases = sheets.filter(({ kind }) => kind === "case");
  return [...new Set(cases.map(({ id }) => id))].flatMap((id): Link[] => {
    const sheet = cases.find((one) => one.id === id);
    if (sheet?.kind !== "case") return [];
    const note = over.has(sheet.code) ? { note: "expired: do not use" } : {};
    return [{ text: cardTitle(sheet), to: cardPath(sheet), ...note }];
  });
}

/** Three doors by what the reader has before the eyes. */
function doorsOf(input: SiteInput): readonly Door[] {
  const { catalogue } = input;
  const { hand, plate, tray } = pictures(input);
  return [
    {
      id: "hand",
      title: "What is in my hand?",
      text: "An instrument or a screw, by the mark on its metal.",
      ...(hand ? { figure: hand } : {}),
      groups: [
        {
          name: "By mark or name",
          links: [
            { text: "Marks A–Z", to: "marks/index.html" },
            { text: "All instruments", to: "instruments/index.html" },
          ],
        },
        ...bySystem(input, catalogue.screws, screwLink, ": screws"),
        ...bySystem(input, catalogue.instruments, instrumentLink, ": instruments"),
      ],
    },
    {
      id: "plate",
      title: "Which plate is on the table?",
      text: "Its side, its holes, and what belongs to each.",
      ...(plate ? { figure: plate } : {}),
      groups: bySystem(input, catalogue.plates, plateLink),
    },
    {
      id: "tray",
      title: "Which tray is open?",
      text: "What lies in which slot, and what looks alike.",
      ...(tray ? { figure: tray } : {}),
      groups: bySystem(input, catalogue.trays, trayLink),
    },
  ];
}

/** A shelf for each of the three users. */
function shelvesOf(input: SiteInput): readonly Door[] {
  const { catalogue } = input;
  return [
    {
      id: "case",
      title: "For one case",
      text: "What to bring, and the order of work.",
      groups: [
        { name: "Cases", links: caseLinks(input) },
        {
          name: "Orders of work",
          links: [...catalogue.procedures.keys()].map((id) => procedureLink(input, id)),
        },
      ],
    },
    {
      id: "teaching",
      title: "For teaching",
      text: "Every card, to print and laminate.",
      groups: [
        {
          name: "Cards",
          links: [{ text: "All cards", to: "cards/index.html" }, ...packLinks(input)],
        },
        {
          name: "Practice and pictures",
          links: [
            { text: "Practice sheets", to: "practice/index.html" },
            { text: "Every drawing and its numbers", to: "gallery/index.html" },
            { text: "In grey and to colour-blind eyes", to: "proof/index.html" },
          ],
        },
        {
          name: "Systems and techniques",
          links: [
            ...[...catalogue.systems.keys()].map((id) => systemLink(input, id)),
            { text: "All techniques", to: "techniques/index.html" },
          ],
        },
      ],
    },
    {
      id: "library",
      title: "For the hospital's library",
      text: "To keep a copy of this site.",
      groups: [
        {
          name: "Hosting",
          links: [
            { text: "How to host this", to: "hosting/index.html" },
            { text: "Everything in one zip", to: "trayleaf-site.zip" },
          ],
        },
        {
          name: "Trust",
          links: [
            { text: "About and safety", to: "about/index.html" },
            { text: "What the rules found", to: "findings/index.html" },
          ],
        },
      ],
    },
  ];
}

/** The start page: a search, the doors, then the shelves. */
export function startPage(input: SiteInput): Page {
  const doors = doorsOf(input);
  return {
    path: "index.html",
    title: input.catalogue.publisher.logo_text,
    titled: true,
    blocks: [
      {
        kind: "text",
        text: "Which instruments belong to which screw, in which hole of which plate: one page each, to read here or print.",
      },
      { kind: "search" },
      {
        kind: "row",
        links: doors.map(({ id, title }) => ({ text: title, to: `index.html#${id}` })),
      },
      { kind: "doors", doors },
      { kind: "doors", doors: shelvesOf(input) },
    ],
  };
}

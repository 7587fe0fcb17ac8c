import { seenOn } from "../../model/look-alike.ts";
import type { Slot } from "../../model/tray.ts";
import type { Block, Link, Page } from "../page.ts";
import type { SiteInput } from "../site-input.ts";
import { cardsBlocks } from "./card-entries.ts";
import { instrumentLink, partLink, plateLink, screwLink, systemLink } from "./part-links.ts";
import { sheetsFrom } from "./sheets-of.ts";

function held(input: SiteInput, slot: Slot): Link {
  if (slot.holds === "instrument") return instrumentLink(input, slot.instrument);
  if (slot.holds === "rack") return screwLink(input, slot.screw);
  return { ...plateLink(input, slot.plate), note: `${slot.holes} holes` };
}

function alikeWithin(input: SiteInput, slots: readonly Slot[]): readonly Block[] {
  const inside = new Set(slots.map((slot) => held(input, slot).to));
  const alike = input.derived.lookAlikes
    .map((pair) => ({
      one: partLink(input, pair.a),
      other: partLink(input, pair.b),
      seen: [seenOn(pair, pair.a), seenOn(pair, pair.b)],
    }))
    .filter(({ one, other }) => inside.has(one.to) && inside.has(other.to));
  if (alike.length === 0) return [];
  return [
    { kind: "heading", text: "What looks alike in it", id: "alike" },
    {
      kind: "table",
      caption: "Look-alikes of this tray, and what tells them apart",
      head: ["this", "has", "looks like", "which has"],
      rows: alike.map(({ one, other, seen: [own = "", its = ""] }) => [
        [one],
        [{ text: own }],
        [other],
        [{ text: its }],
      ]),
    },
  ];
}

/** A page for each tray: its card, and what lies in which slot. */
export function trayPages(input: SiteInput): readonly Page[] {
  return [...input.catalogue.trays.values()].map((tray): Page => {
    const cards = sheetsFrom(input, tray.file);
    const card = cards.find((sheet) => sheet.kind === "tray");
    const contents = new Map(card?.contents.map((line) => [line.slot, line]));
    return {
      path: `trays/${tray.id}.html`,
      title: tray.name,
      titled: true,
      blocks: [
        {
          kind: "facts",
          facts: [
            { name: "Mark on the tray", says: [{ text: tray.mark }] },
            { name: "Revision", says: [{ text: tray.revision }] },
            { name: "System", says: [systemLink(input, tray.system)] },
            { name: "Pieces", says: [{ text: String(tray.total) }] },
          ],
        },
        ...cardsBlocks(input, { id: "cards", text: "Its card" }, cards),
        { kind: "heading", text: "What lies where", id: "contents" },
        {
          kind: "table",
          caption: "Slots in order",
          head: ["slot", "what", "mark", "pieces"],
          rows: [...tray.slots]
            .sort((a, b) => a.at[1] - b.at[1] || a.at[0] - b.at[0])
            .map((slot) => [
              [{ text: slot.slot }],
              [held(input, slot)],
              [{ text: contents.get(slot.slot)?.mark ?? "" }],
              [{ text: contents.get(slot.slot)?.quantity ?? "" }],
            ]),
        },
        ...alikeWithin(input, tray.slots),
      ],
    };
  });
}

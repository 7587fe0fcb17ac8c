import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { isLag } from "../../lib/compose/chain-groups.ts";
import { trapLines } from "../../lib/compose/traps.ts";
import { pictures } from "../../lib/draw/pictures.ts";
import { checkLibrary } from "../../lib/index.ts";
import type { WarningLine } from "../../lib/model/sheet-frame.ts";
import { builtSite } from "./built-site.ts";

const { catalogue, derived, sheets = [] } = checkLibrary("content", "2026-11-25");
if (!catalogue || !derived) throw new Error("The demo library has stops");

const spaced = (text: string): string => text.replace(/\s+/g, " ").trim();
const said = ({ subject, words, other }: WarningLine): string =>
  spaced([subject, words, other?.subject ?? "", other?.words ?? ""].join(" "));

/** The lists of warnings under the sheet on a card's page, in words. */
function listed(html: string): readonly (readonly string[])[] {
  return [...html.matchAll(/<ol class="warnings chrome">(.*?)<\/ol>/gs)].map(([, list = ""]) =>
    [...list.matchAll(/<li>(.*?)<\/li>/gs)].map(([, item = ""]) =>
      spaced(item.replace(/<[^>]*>/g, "").replaceAll("&quot;", '"')),
    ),
  );
}

test("A card's page lists all that its boxes leave to the site, the printed lines first.", async () => {
  const folder = await builtSite();
  const cut = sheets.flatMap((sheet) => {
    const boxes = [
      "traps" in sheet ? sheet.traps : [],
      "lookAlikes" in sheet ? sheet.lookAlikes : [],
    ];
    const left = boxes.flat().filter(({ more }) => more !== undefined);
    return left.length > 0 ? [{ sheet, left }] : [];
  });
  expect(cut.length).toBeGreaterThan(20);
  for (const { sheet, left } of cut) {
    const page = join(folder, "cards", sheet.id, `${sheet.format.id}.html`);
    const lists = listed(readFileSync(page, "utf8"));
    expect(lists).toEqual(left.map(({ lines, rest = [] }) => [...lines, ...rest].map(said)));
    for (const [index, { lines, more = "" }] of left.entries())
      expect(more).toBe(`${(lists[index]?.length ?? 0) - lines.length} more on the site.`);
  }
});

test("The list of a pairing sheet is every trap of its system.", async () => {
  const folder = await builtSite();
  const chains = derived.chains.filter((one) => one.system === "pebblefin" && !isLag(one));
  const all = trapLines(
    { catalogue, derived, pictures, today: "2026-11-25" },
    chains.map(({ zone }) => zone),
    chains,
  );
  const page = join(folder, "cards", "pebblefin-pairing-plates", "a4-landscape.html");
  expect(listed(readFileSync(page, "utf8"))[0]).toEqual(all.map(said));
});

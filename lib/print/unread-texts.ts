import { floorSize } from "../model/type-sizes.ts";
import type { Letter } from "./painted-page.ts";

/** A letter has at least this part of the ink of black on white. */
const leastInk = 0.6;
/** The least size of any text, points: 16 minutes of arc in the hand, less what layout rounds away. */
const leastSize = (floorSize(16, 350) * 72) / 25.4 - 0.05;

const bare = (text: string): string => text.normalize("NFKC").replace(/\s+/g, "");

/** Why a letter is not read, or nothing. */
function fault({ hidden, ink, size }: Letter): string | undefined {
  if (hidden) return hidden;
  if (ink < leastInk) return `too faint: ${Math.round(ink * 100)} % of full ink, at least 60 %`;
  if (size < leastSize)
    return `too small: ${((size * 25.4) / 72).toFixed(2)} mm, at least ${floorSize(16, 350).toFixed(2)} mm`;
  return undefined;
}

/** The texts that a reader of the page would not meet whole, each with the reason where it stands there and cannot be read. */
export function unreadTexts(letters: readonly Letter[], expected: readonly string[]): string[] {
  const owners: Letter[] = [];
  let told = "";
  for (const letter of letters) {
    const says = bare(letter.says);
    told += says;
    for (let at = 0; at < says.length; at++) owners.push(letter);
  }
  return expected.flatMap((text) => {
    const wanted = bare(text);
    let why: string | undefined;
    for (let at = told.indexOf(wanted); at >= 0; at = told.indexOf(wanted, at + 1)) {
      const faults = owners.slice(at, at + wanted.length).flatMap((letter) => fault(letter) ?? []);
      if (faults.length === 0) return [];
      why ??= faults[0];
    }
    return [why === undefined ? text : `${text} (${why})`];
  });
}

import type { PlateSide } from "../../model/figure.ts";
import type { LaidPlate } from "../../model/laid-plate.ts";
import { mm } from "../../model/measure.ts";
import type { Pen } from "../canvas.ts";
import type { LaidMap } from "../layout/laid-map.ts";
import { mapLetters } from "../layout/map-letters.ts";
import { sideRoom } from "../layout/side-band.ts";
import { textWidth } from "../text-widths.ts";
import { edges, leaders } from "../tokens.ts";
import { noteDrop } from "./region-mark.ts";
import { type SideProfile, sideProfile } from "./side-profile.ts";
import { sideView } from "./side-view.ts";

const { note } = mapLetters;
const gap = 3;
const { halfBar } = leaders;

/** How thick a plate is, in words with their unit, from the start of the picture to its end; each with the middle of its part, true mm. */
function thicknesses(
  { thickness }: PlateSide,
  { from, to, neck, head }: SideProfile,
): readonly { readonly words: string; readonly at: number }[] {
  const shaft = `${mm(thickness.shaft)} mm thick`;
  if (neck === undefined || thickness.head === undefined)
    return [{ words: `from the side: ${shaft}`, at: (from + to) / 2 }];
  const parts = [
    { words: `head ${mm(thickness.head)} mm thick`, end: head === "start" ? from : to },
    { words: `shaft ${shaft}`, end: head === "start" ? to : from },
  ].map(({ words, end }) => ({ words, at: (neck + end) / 2 }));
  const [first, second] = head === "start" ? parts : parts.toReversed();
  return first === undefined || second === undefined
    ? []
    : [{ ...first, words: `from the side: ${first.words}` }, second];
}

/** A plate's view from the side below its map, at the map's scale and straight below each hole, with how thick it is. */
export function mapSide(
  pen: Pen,
  plate: LaidPlate,
  { fitted, side: laid }: Pick<LaidMap, "fitted" | "side">,
  side: PlateSide | undefined,
  width: number,
): void {
  if (laid === undefined || side === undefined) return;
  const profile = sideProfile(plate, side);
  const x = (place: number): number => fitted.project([place * 1000, 0])[0];
  const { scale } = fitted;
  pen.group("side", { data: { scale, side: plate.id } }, (group) =>
    sideView(group, { plate, side, profile, scale, base: laid.base, x }),
  );
  let taken = 0;
  for (const { words, at } of thicknesses(side, profile)) {
    const long = textWidth(words, note);
    const left = Math.max(taken, Math.min(x(at) - long / 2, width - edges.close - long));
    const bar = Math.min(Math.max(x(at), left + halfBar), left + long - halfBar);
    pen.line([bar, laid.base - 0.4], [bar, laid.words], { data: { thickness: words } });
    pen.line([bar - halfBar, laid.words], [bar + halfBar, laid.words], { stroke: "bold" });
    pen.words([left, laid.words + sideRoom.words / 2 + noteDrop + 0.2], words, {
      size: note,
      data: { word: "thickness" },
    });
    taken = left + long + gap;
  }
}

/** How thick a plate's parts are, for a figure's table: "head 1.6 mm thick". */
export const thicknessFacts = ({
  thickness: { head, shaft },
}: PlateSide): readonly (readonly [string, string])[] =>
  head === undefined
    ? [["thickness", `${mm(shaft)} mm`]]
    : [
        ["head", `${mm(head)} mm thick`],
        ["shaft", `${mm(shaft)} mm thick`],
      ];

import type { SectionParts, SectionSize } from "../../../model/figure.ts";
import type { Interfaces } from "../../../model/interfaces.ts";
import { typeSizes } from "../../tokens.ts";
import { inMm } from "../instrument-part.ts";
import type { SectionPlaces } from "./section-places.ts";

/** A cut view on paper: the screw's axis lies across it, bone to the left, the plate on it, the head to the right. */
export type SectionScene = {
  readonly width: number;
  readonly height: number;
  /** The strip of the figure that holds the picture; measures stand above and beneath it. */
  readonly top: number;
  readonly bottom: number;
  readonly axis: number;
  /** Font size of its words, mm; the room for words follows it. */
  readonly letter: number;
  /** Paper mm per mm of metal. */
  readonly scale: number;
  /** Paper abscissa of a place along the axis (true mm). */
  readonly x: (place: number) => number;
  readonly places: SectionPlaces;
  readonly parts: SectionParts;
  readonly interfaces: Interfaces;
};

/** Room before the tip and beneath the picture, in letters. */
const left = 2;
const beneath = 3.03;
const beyondTip = 1.6;
const metalBeside = 2.6;
/** Millimetres of bone that stay on each side of the thread, for words. */
const wordsBeside = 3.1;

/** Fits a cut view into its size (mm), with room for words over the picture and beside the head, in letters. */
export function sectionScene(
  places: SectionPlaces,
  parts: SectionParts,
  interfaces: Interfaces,
  size: SectionSize,
  room: { readonly above: number; readonly right: number },
): SectionScene {
  const { width, height, letter = typeSizes.small } = size;
  const { screw, zone } = parts;
  const from =
    Math.min(places.tip, places.far ?? places.tip) -
    (places.far === undefined ? beyondTip * 2 : beyondTip);
  const wide =
    Math.max(inMm(screw.head.diameter), "seat" in zone ? inMm(zone.seat) : 0) + metalBeside;
  const [top, bottom] = [room.above * letter, height - beneath * letter];
  const scale = Math.min(
    (width - (left + room.right) * letter) / (places.top - from),
    (bottom - top) / wide,
    (bottom - top - 2 * wordsBeside) / inMm(screw.major),
  );
  return {
    width,
    height,
    letter,
    top,
    bottom,
    axis: (top + bottom) / 2,
    scale,
    x: (place) => left * letter + (place - from) * scale,
    places,
    parts,
    interfaces,
  };
}

import type { SectionParts } from "../../../model/figure.ts";
import type { Interfaces } from "../../../model/interfaces.ts";
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
  /** Paper mm per mm of metal. */
  readonly scale: number;
  /** Paper abscissa of a place along the axis (true mm). */
  readonly x: (place: number) => number;
  readonly places: SectionPlaces;
  readonly parts: SectionParts;
  readonly interfaces: Interfaces;
};

const left = 7;
const beneath = 10.6;
const beyondTip = 1.6;
const metalBeside = 3.6;

/** Fits a cut view into its size (mm), `above` mm of it left for words over the picture and `right` mm beside the head. */
export function sectionScene(
  places: SectionPlaces,
  parts: SectionParts,
  interfaces: Interfaces,
  size: {
    readonly width: number;
    readonly height: number;
    readonly above: number;
    readonly right: number;
  },
): SectionScene {
  const { screw, zone } = parts;
  const from =
    Math.min(places.tip, places.far ?? places.tip) -
    (places.far === undefined ? beyondTip * 2 : beyondTip);
  const wide =
    Math.max(inMm(screw.head.diameter), "seat" in zone ? inMm(zone.seat) : 0) + metalBeside;
  const [top, bottom] = [size.above, size.height - beneath];
  const scale = Math.min(
    (size.width - left - size.right) / (places.top - from),
    (bottom - top) / wide,
  );
  return {
    width: size.width,
    height: size.height,
    top,
    bottom,
    axis: (top + bottom) / 2,
    scale,
    x: (place) => left + (place - from) * scale,
    places,
    parts,
    interfaces,
  };
}

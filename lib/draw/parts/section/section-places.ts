import type { SectionParts, SectionView } from "../../../model/figure.ts";
import { inMm } from "../instrument-part.ts";
import { exampleLength } from "../screw-shape.ts";
import { headBowl } from "../segments/head-profile.ts";

/** Where everything of a cut view lies along the screw's axis, true mm: 0 is the plate's outer face, the bone lies below it. */
export type SectionPlaces = {
  readonly inner: number;
  /** Where a seat begins to widen; the outer face where the hole has none. */
  readonly seat: number;
  readonly under: number;
  readonly top: number;
  /** From where the screw's length counts. */
  readonly datum: number;
  readonly tip: number;
  readonly near: number;
  /** Outer face of the far side; absent where the screw ends within the bone. */
  readonly far?: number;
  readonly cortex: number;
  /** Between the two pieces that a lag screw draws together. */
  readonly split?: number;
};

const past = 1.2;
const standOff = 0.5;
const least = 5;

/** A head that rests in a plain hole: it meets the narrowest width where it is as wide, as deep as the plate allows. */
function seated({ screw, zone }: SectionParts, thickness: number): { seat: number; under: number } {
  const bowl = headBowl(screw.head, inMm(screw.core));
  const reach = inMm(zone.through) / 2;
  const steps = Array.from({ length: 101 }, (_, index) => (bowl.height * index) / 100);
  const meets = steps.find((x) => bowl.half(x) >= reach) ?? bowl.height;
  const lip = "seat" in zone ? Math.max(0, inMm(zone.seat - screw.head.diameter) / 2) : 0;
  const seat = -Math.min(thickness * 0.85, bowl.height - meets + lip);
  return { seat, under: seat - meets };
}

/** Lays out a cut view from the numbers alone. */
export function sectionPlaces(view: SectionView, parts: SectionParts): SectionPlaces {
  const { screw, zone, plateThickness, depth = "both-cortices" } = parts;
  const thickness = inMm(plateThickness);
  const height = inMm(screw.head.height);
  const threaded = zone.kind === "threaded";
  const { seat, under } = threaded ? { seat: 0, under: -height } : seated(parts, thickness);
  const top = under + height;
  const datum = screw.length_counts_from === "head-top" ? top : under;
  const tip = datum - inMm(parts.length ?? exampleLength(screw));
  const inner = -thickness;
  const near = threaded ? Math.min(inner, under) - standOff : inner;
  const through = depth === "both-cortices" && near - tip - past >= least;
  const far = tip + past;
  return {
    inner,
    seat,
    under,
    top,
    datum,
    tip,
    near,
    cortex: Math.min(2.5, Math.max(1.2, (near - far) * 0.2)),
    ...(through ? { far } : {}),
    ...(through && view !== "seated" ? { split: far + (near - far) * 0.52 } : {}),
  };
}

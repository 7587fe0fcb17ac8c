import type { Um } from "./measure.ts";
import type { OpeningKind, ZoneKind } from "./zone.ts";

/** A point in plate coordinates, micrometres: x along the plate from its start, y across, positive down the page. */
export type Point = readonly [x: Um, y: Um];

/** One zone of a placed hole, with the sizes it is drawn at (micrometres; a seat only where a head rests, a slot only where oblong). */
export type LaidZone = {
  readonly zone: string;
  readonly kind: ZoneKind;
  readonly at: Point;
  readonly through?: Um;
  readonly seat?: Um;
  readonly slot?: Um;
};

/** A hole in its place, each zone with its own centre. */
export type LaidHole = {
  readonly label: string;
  readonly opening: string;
  readonly kind: OpeningKind;
  readonly region: "head" | "shaft";
  readonly at: Point;
  readonly zones: readonly LaidZone[];
  readonly threadedEnd?: "proximal" | "distal";
};

/** One plate, side and length variant in true geometry. */
export type LaidPlate = {
  readonly id: string; // `${plate}-${holes}`
  readonly plate: string;
  readonly system: string;
  readonly name: string;
  readonly side: "left" | "right" | "none";
  readonly holesInRow: number;
  readonly length: Um;
  readonly statedLength: Um;
  readonly proximal: "start" | "end";
  /** Closed outline: a start point and cubic or straight segments. */
  readonly outline: { readonly start: Point; readonly segments: readonly OutlineSegment[] };
  /** In order: head holes, then the row from the head outwards, then wires and sutures. */
  readonly holes: readonly LaidHole[];
  readonly hooks?: {
    readonly count: number;
    readonly depth: Um;
    readonly spread: Um;
    readonly at: "start" | "end";
  };
  readonly bounds: { readonly min: Point; readonly max: Point };
};

export type OutlineSegment =
  | { readonly line: Point }
  | { readonly curve: readonly [Point, Point, Point] };

import type { StepParts } from "../../model/figure.ts";
import type { Interfaces } from "../../model/interfaces.ts";
import type { Pen } from "../canvas.ts";

/** A step's frame seen along the plate, in mm of paper: bone to the left, the plate on it, tools coming from the right along
 * one axis, everything at one scale. */
export type Scene = {
  readonly width: number;
  readonly height: number;
  /** Height of the screw's axis. */
  readonly axis: number;
  /** Paper mm per mm of metal. */
  readonly scale: number;
  readonly bone: { readonly far: number; readonly near: number; readonly cortex: number };
  readonly plate: { readonly from: number; readonly to: number };
  readonly parts: StepParts;
  readonly interfaces: Interfaces;
};

/** Draws one verb into a frame. */
export type StepDrawing = (pen: Pen, scene: Scene) => void;

const biggest = 1.6;
const leastBone = 17.8;

function widest({ sleeve, guide, insert, screw, zone, limiter, handle }: StepParts): number {
  const outer = sleeve?.kind === "threaded-sleeve" ? sleeve.outer : 0;
  const foot =
    guide?.kind === "plain-guide" ? Math.max(...guide.ends.map((end) => end.foot)) + 2600 : 0;
  const tube = insert?.kind === "reduction-insert" ? insert.outer + 1200 : 0;
  const seat = zone && "seat" in zone ? zone.seat : (zone?.through ?? 0);
  return (
    Math.max(
      6000,
      outer + 1800,
      foot,
      tube,
      seat,
      screw?.head.diameter ?? 0,
      limiter || handle ? 10000 : 0,
    ) / 1000
  );
}

/** Lays out a frame of the given size (mm) for the parts it shows. */
export function sceneOf(
  parts: StepParts,
  interfaces: Interfaces,
  size: { readonly width: number; readonly height: number },
): Scene {
  const { width, height } = size;
  const scale = Math.min(biggest, (height - 4.5) / widest(parts));
  const near = Math.max(width * 0.43, leastBone);
  const thickness = ((parts.plateThickness ?? 3000) / 1000) * scale;
  return {
    width,
    height,
    axis: height / 2 - 0.8,
    scale,
    bone: { far: 2.4, near, cortex: 2.6 },
    plate: { from: near, to: near + Math.max(1.8, thickness) },
    parts,
    interfaces,
  };
}

/** Width of a zone's passage on paper, mm; that of the screw's thread where no zone is given. */
export function passage({ parts, scale }: Scene): number {
  return ((parts.zone?.through ?? parts.screw?.major ?? 4000) / 1000) * scale;
}

/** Width of the pilot hole on paper, mm. */
export function pilotWidth({ parts, scale }: Scene): number {
  const drill =
    parts.drill?.kind === "drill" && parts.drill.use === "pilot" ? parts.drill.diameter : undefined;
  return ((parts.screw?.pilot ?? drill ?? 2500) / 1000) * scale;
}

/** Width of the gliding hole on paper, mm. */
export function glidingWidth({ parts, scale }: Scene): number {
  const drill =
    parts.drill?.kind === "drill" && parts.drill.use === "gliding"
      ? parts.drill.diameter
      : undefined;
  return ((parts.screw?.gliding ?? drill ?? parts.screw?.major ?? 3500) / 1000) * scale;
}

/** Whether the pilot hole goes through both cortices. */
export const throughBone = (drilled: StepParts["drilled"]): boolean =>
  (drilled?.pilot ?? "both-cortices") === "both-cortices";

/** Where the gliding hole ends on paper: just inside the near cortex. */
export const glidingEnd = ({ bone }: Scene): number => bone.near - bone.cortex - 1;

/** Where the pilot hole ends on paper: past the far cortex, just inside the near one where the technique stops there, between the two where the surgeon decides how deep. */
export function pilotEnd({ parts, bone }: Scene): number {
  const inside = bone.near - bone.cortex;
  const ends = {
    "both-cortices": bone.far - 1.6,
    "near-cortex": inside - 1.6,
    "surgeon-decides": inside - (inside - bone.far) * 0.5,
  };
  return ends[parts.drilled?.pilot ?? "both-cortices"];
}

import type { LaidZone } from "../../model/laid-plate.ts";
import type { Um } from "../../model/measure.ts";

/** Sizes a zone is drawn at, micrometres: its whole extent along and across the plate and what passes through it. */
export type ZoneSize = {
  readonly along: Um;
  readonly across: Um;
  readonly through: Um;
  readonly slot: Um;
};

const plainThrough: Readonly<Record<LaidZone["kind"], Um>> = {
  threaded: 4000,
  "plain-round": 4200,
  "plain-oblong": 4200,
  wire: 1700,
  suture: 2000,
};

/** How large a zone is on the plate; what the zone does not state follows from its kind and the width a screw passes. */
export function zoneSize(zone: LaidZone): ZoneSize {
  const through = zone.through ?? plainThrough[zone.kind];
  const slot =
    zone.kind === "plain-oblong"
      ? Math.max(zone.slot ?? Math.round(through * 1.45), through)
      : through;
  const seated = zone.kind === "plain-round" || zone.kind === "plain-oblong";
  const across = seated ? Math.max(zone.seat ?? Math.round(through * 1.5), through) : through;
  return { along: across + slot - through, across, through, slot };
}

import type { PlateSide } from "../../model/figure.ts";
import type { LaidPlate, LaidZone } from "../../model/laid-plate.ts";
import type { PathPiece, Pen, Spot } from "../canvas.ts";
import { sideRoom } from "../layout/side-band.ts";
import { inMm } from "./instrument-part.ts";
import type { SideProfile } from "./side-profile.ts";

/** A plate seen from the side: paper mm per mm of plate, where on the figure its bone side lies, and where a place along it (true mm). */
export type SideView = {
  readonly plate: LaidPlate;
  readonly side: PlateSide;
  readonly profile: SideProfile;
  readonly scale: number;
  readonly base: number;
  readonly x: (place: number) => number;
};

function hook(pen: Pen, { plate, profile, scale, base, x }: SideView): void {
  const { hooks } = plate;
  if (hooks === undefined) return;
  const way = hooks.at === "end" ? 1 : -1;
  const root = x(hooks.at === "end" ? profile.to : profile.from);
  const thick = profile.thickAt(hooks.at === "end" ? profile.to : profile.from) * scale;
  const deep = inMm(hooks.depth) * scale;
  const out = root + way * thick;
  const pieces: readonly PathPiece[] = [
    ["M", root, base - thick],
    ["C", root + way * thick * 0.6, base - thick, out, base - thick * 0.6, out, base],
    ["L", out - way * thick * 0.35, base + deep],
    ["L", out - way * thick * 0.6, base + deep],
    ["L", root, base],
  ];
  pen.path(pieces, { fill: "metal", stroke: "bold", data: { hooks: hooks.count } });
}

function body(pen: Pen, { plate, profile, scale, base, x }: SideView): void {
  const steps = 60;
  const places = Array.from(
    { length: steps + 1 },
    (_, index) => profile.from + ((profile.to - profile.from) * index) / steps,
  );
  const upper = places.map((place): Spot => [x(place), base - profile.thickAt(place) * scale]);
  const spots: readonly Spot[] = [[x(profile.from), base], ...upper, [x(profile.to), base]];
  pen.polygon(spots, { fill: "metal", stroke: "bold", data: { edge: "side", plate: plate.id } });
}

const halfOf = ({ slot, through = 0 }: LaidZone): number => Math.max(slot ?? 0, through) / 2;

function holeAxes(pen: Pen, { plate, profile, scale, base, x }: SideView): void {
  for (const hole of plate.holes) {
    pen.group("bore", { data: { bore: hole.label } }, (group) => {
      for (const zone of hole.zones) {
        const at = inMm(zone.at[0]);
        const top = base - profile.thickAt(at) * scale;
        for (const side of [-1, 1]) {
          const wall = x(at + (side * halfOf(zone)) / 1000);
          group.line([wall, top], [wall, base], { stroke: "hair", dash: "hidden" });
        }
        group.line([x(at), top - sideRoom.axis], [x(at), base + sideRoom.axis], {
          stroke: "hair",
          dash: "centre",
          data: { axis: hole.label, at },
        });
      }
    });
  }
}

/** A plate from the side, the face away from the bone up: its hooks, its body and the axis of each hole. */
export function sideView(pen: Pen, view: SideView): void {
  hook(pen, view);
  body(pen, view);
  holeAxes(pen, view);
}

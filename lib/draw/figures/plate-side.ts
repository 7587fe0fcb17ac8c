import type { Figure, Pictures, PlateSide } from "../../model/figure.ts";
import type { LaidHole, LaidPlate, LaidZone } from "../../model/laid-plate.ts";
import { mm } from "../../model/measure.ts";
import { drawFigure, type PathPiece, type Pen, type Spot } from "../canvas.ts";
import { inMm } from "../parts/instrument-part.ts";
import { dimension } from "../parts/section/dimension.ts";
import { type SideProfile, sideProfile } from "../parts/side-profile.ts";
import { textWidth } from "../text-widths.ts";

const letter = 3.5;
const [above, below, edge, beside] = [6, 9, 1, 24];
const axisOut = 1.6;

type Side = {
  readonly plate: LaidPlate;
  readonly side: PlateSide;
  readonly profile: SideProfile;
  readonly scale: number;
  readonly base: number;
  readonly x: (place: number) => number;
};

function hook(pen: Pen, { plate, profile, scale, base, x }: Side): void {
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

function body(pen: Pen, { plate, profile, scale, base, x }: Side): void {
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

function holeAxes(pen: Pen, { plate, profile, scale, base, x }: Side): void {
  for (const hole of plate.holes) {
    pen.group("hole", { data: { hole: hole.label } }, (group) => {
      for (const zone of hole.zones) {
        const at = inMm(zone.at[0]);
        const top = base - profile.thickAt(at) * scale;
        for (const side of [-1, 1]) {
          const wall = x(at + (side * halfOf(zone)) / 1000);
          group.line([wall, top], [wall, base], { stroke: "hair", dash: "hidden" });
        }
        group.line([x(at), top - axisOut], [x(at), base + axisOut], {
          stroke: "hair",
          dash: "centre",
          data: { axis: hole.label, at },
        });
      }
    });
  }
}

/** The stretch between two holes that may be bent, true mm along the plate. */
function bendOf(
  plate: LaidPlate,
  [one, other]: readonly [string, string],
): readonly [number, number] | undefined {
  const found = [one, other].flatMap(
    (label) => plate.holes.find((hole) => hole.label === label) ?? [],
  );
  const [left, right] = found.toSorted((a, b) => a.at[0] - b.at[0]);
  if (left === undefined || right === undefined) return undefined;
  const reach = (hole: LaidHole, way: 1 | -1): number =>
    way * Math.max(...hole.zones.map((zone) => way * zone.at[0] + halfOf(zone)));
  return [inMm(reach(left, 1)), inMm(reach(right, -1))];
}

function bends(pen: Pen, { plate, side, base, x }: Side): void {
  const spans = side.bends.flatMap((pair) => {
    const span = bendOf(plate, pair);
    return span === undefined ? [] : [span];
  });
  const y = base + 3.4;
  for (const [from, to] of spans)
    pen.polyline(
      [
        [x(from), y - 1],
        [x(from), y],
        [x(to), y],
        [x(to), y - 1],
      ],
      {
        stroke: "bold",
        data: { bend: `${from} ${to}` },
      },
    );
  const [first] = spans;
  if (first !== undefined)
    pen.words([x(first[0]), y + letter * 1.1], spans.length === 1 ? "bend zone" : "bend zones", {
      size: letter,
    });
}

function thicknesses(pen: Pen, { side, profile, scale, base, x }: Side, width: number): void {
  const ends: readonly (readonly [string, number | undefined, number])[] =
    profile.neck === undefined
      ? [["", side.thickness.shaft, profile.to]]
      : [
          ["head", side.thickness.head, profile.head === "end" ? profile.to : profile.from],
          ["shaft", side.thickness.shaft, profile.head === "end" ? profile.from : profile.to],
        ];
  for (const [name, size, place] of ends) {
    if (size === undefined) continue;
    const way = place === profile.to ? 1 : -1;
    const at = x(place) + way * 4.5;
    const top = base - inMm(size) * scale;
    for (const y of [top, base]) pen.line([x(place) + way, y], [at + way, y], { stroke: "hair" });
    dimension(pen, { name: `${name} thickness`.trim(), size: inMm(size) }, [at, top], [at, base]);
    const words = `${name} ${mm(size)}`.trim();
    const left = way > 0 ? at + 1.6 : at - 1.6 - textWidth(words, letter, 600);
    pen.words(
      [
        Math.max(0, Math.min(left, width - textWidth(words, letter, 600))),
        (top + base) / 2 + letter / 3,
      ],
      words,
      {
        size: letter,
        weight: 600,
      },
    );
  }
}

/** A plate from the side in true proportion: how thick it is, the axis of each hole, its hooks, and where it may be bent. */
export const plateSide: Pictures["plateSide"] = (id, plate, side, width) => {
  const profile = sideProfile(plate, side);
  const room = width - 2 * (beside + edge);
  const scale = Math.floor((1000 * room) / (profile.to - profile.from)) / 1000;
  const tall = Math.max(profile.thickAt(profile.from), profile.thickAt(profile.to)) * scale;
  const deep = plate.hooks === undefined ? 0 : inMm(plate.hooks.depth) * scale;
  const base = above + tall;
  const height = base + Math.max(below, deep + 2);
  const x = (place: number): number => edge + beside + (place - profile.from) * scale;
  const all: Side = { plate, side, profile, scale, base, x };
  const { head, shaft } = side.thickness;
  const facts: NonNullable<Figure["facts"]> = [
    ["length", `${mm(plate.length)} mm`],
    ...(head === undefined ? [] : [["head", `${mm(head)} mm thick`] as const]),
    [
      head === undefined ? "thickness" : "shaft",
      `${mm(shaft)} mm${head === undefined ? "" : " thick"}`,
    ],
    ...(plate.hooks
      ? [["hooks", `${plate.hooks.count}, ${mm(plate.hooks.depth)} mm deep`] as const]
      : []),
    [
      "bend zones",
      side.bends.length === 0
        ? "none stated"
        : side.bends.map((pair) => pair.join(" to ")).join(", "),
    ],
    ["drawn at", `${Math.round(scale * 100)} % of true size`],
  ];
  const about = {
    title: `${plate.name}, ${plate.holesInRow} holes, from the side`,
    description: `The face away from the bone is up. ${facts.map(([what, value]) => `${what}: ${value}`).join("; ")}.`,
    width,
    height,
  };
  const figure = drawFigure(id, about, (pen) =>
    pen.group("side", { data: { scale, plate: plate.id } }, (group) => {
      hook(group, all);
      body(group, all);
      holeAxes(group, all);
      bends(group, all);
      thicknesses(group, all, width);
      group.words([x(profile.from), letter], "this face up", { size: letter });
    }),
  );
  return { ...figure, facts };
};

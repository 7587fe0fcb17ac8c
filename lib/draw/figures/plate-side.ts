import type { Figure, Pictures } from "../../model/figure.ts";
import { mm } from "../../model/measure.ts";
import { plateTitle } from "../../model/plate-name.ts";
import { drawFigure, type Pen } from "../canvas.ts";
import { bendZones } from "../layout/bend-zones.ts";
import { inMm } from "../parts/instrument-part.ts";
import { dimension } from "../parts/section/dimension.ts";
import { sideProfile } from "../parts/side-profile.ts";
import { type SideView, sideView } from "../parts/side-view.ts";
import { textWidth } from "../text-widths.ts";
import { edges, gaps, typeSizes } from "../tokens.ts";

const letter = typeSizes.small;
/** Room before a plate whose hooks point that way, mm. */
const hooked = 4;
const [above, edge, beside] = [gaps.block, edges.wide, 28];
/** Room beneath a plate for its holes' axes, and for the marks and words of what may be bent, mm. */
const below = { axes: 3, bends: 9 } as const;

function bends(pen: Pen, { plate, side, base, x }: SideView): void {
  const spans = bendZones(plate, side.bends).map(({ from, to }) => [inMm(from), inMm(to)] as const);
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

function thicknesses(pen: Pen, { side, profile, scale, base, x }: SideView, width: number): void {
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
    const words = name === "" ? `${mm(size)} mm thick` : `${name} ${mm(size)} mm`;
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
  const both = profile.neck !== undefined && side.thickness.head !== undefined;
  const left = edge + (both ? beside : plate.hooks?.at === "start" ? hooked : 0);
  const room = width - left - beside - edge;
  const scale = Math.floor((1000 * room) / (profile.to - profile.from)) / 1000;
  const tall = Math.max(profile.thickAt(profile.from), profile.thickAt(profile.to)) * scale;
  const deep = plate.hooks === undefined ? 0 : inMm(plate.hooks.depth) * scale;
  const base = above + tall;
  const under = bendZones(plate, side.bends).length > 0 ? below.bends : below.axes;
  const height = base + Math.max(under, deep + 2);
  const x = (place: number): number => left + (place - profile.from) * scale;
  const all: SideView = { plate, side, profile, scale, base, x };
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
    title: `${plateTitle(plate, plate.holesInRow)}, from the side`,
    description: `The face away from the bone is up. ${facts.map(([what, value]) => `${what}: ${value}`).join("; ")}.`,
    width,
    height,
  };
  const figure = drawFigure(id, about, (pen) =>
    pen.group("side", { data: { scale, plate: plate.id } }, (group) => {
      sideView(group, all);
      bends(group, all);
      thicknesses(group, all, width);
      group.words([x(profile.from), letter], "from the side, this face up", { size: letter });
    }),
  );
  return { ...figure, facts };
};

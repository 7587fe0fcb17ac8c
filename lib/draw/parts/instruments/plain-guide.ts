import type { GuideEnd } from "../../../model/instrument.ts";
import type { Pen } from "../../canvas.ts";
import { type InstrumentPart, inMm, sampleSource } from "../instrument-part.ts";
import { bored } from "../segments/bored.ts";
import { grip } from "../segments/grip.ts";
import { rod } from "../segments/rod.ts";
import type { Segment } from "../shape.ts";

const spigot = 3;

/** A drill guide without thread: a grip with a tube at either side, each tube ending in its own named foot; the bore runs dashed. */
export const plainGuide: InstrumentPart<"plain-guide"> = {
  id: "plain-guide",
  label: "guide",
  shape(instrument, _interfaces, end) {
    const bore = inMm(instrument.bore);
    const outer = Math.max(bore + 1.8, ...instrument.ends.map((each) => inMm(each.foot) + 0.8));
    const length = inMm(instrument.length);
    const ends = [...instrument.ends].sort(
      (a, b) => Number(b.name === end) - Number(a.name === end),
    );
    const [left, right, third] = ends;
    const holding = length * 0.34;
    const tube =
      (length - holding - spigot * (right === undefined ? 1 : 2)) / (right === undefined ? 1 : 2);
    const grasp = bored(grip(holding, outer + 1.8), bore);
    const hanging =
      third === undefined
        ? []
        : [bored(rod(outer / 2 + 3, outer), bore), mirrored(foot(third, bore))];
    return {
      ...(third === undefined ? {} : { arm: { at: length / 2, segments: hanging } }),
      endNames: ends.map((each) => each.name),
      segments: [
        ...(left === undefined
          ? []
          : [foot(left, bore), arrowed(bored(rod(tube, outer), bore), left, "left")]),
        grasp,
        ...(right === undefined
          ? []
          : [arrowed(bored(rod(tube, outer), bore), right, "right"), mirrored(foot(right, bore))]),
      ],
    };
  },
  samples: [
    {
      kind: "plain-guide",
      name: "guide 2.5",
      mark: "2.5",
      source: sampleSource,
      bore: 2600,
      length: 45000,
      rests_on: "plate-hole",
      use: "pilot",
      ends: [
        { name: "centred", foot: 3700 },
        { name: "offset", foot: 3700, offset: 400 },
      ],
    },
    {
      kind: "plain-guide",
      name: "gliding guide 3.5",
      mark: "3.5",
      source: sampleSource,
      bore: 3600,
      length: 40000,
      rests_on: "seat",
      use: "gliding",
      ends: [{ name: "free", foot: 5600 }],
    },
  ],
};

function foot(end: GuideEnd, bore: number): Segment {
  const drop = end.name === "offset" ? inMm(end.offset ?? end.foot * 0.1) : 0;
  const chamfer = end.name === "free" ? 0 : 0.4;
  return bored(rod(spigot, inMm(end.foot), { chamfer, drop, data: { foot: end.name } }), bore);
}

function mirrored(segment: Segment): Segment {
  return {
    ...segment,
    draw(pen, { from, to, cutLeft, cutRight }) {
      const turned = {
        from: segment.length - to,
        to: segment.length - from,
        cutLeft: cutRight,
        cutRight: cutLeft,
      };
      pen.group("mirrored", { at: [segment.length, 0], scale: [-1, 1] }, (inner) =>
        segment.draw(inner, turned),
      );
    },
  };
}

function arrowed(segment: Segment, end: GuideEnd, side: "left" | "right"): Segment {
  if (end.name === "free") return segment;
  return {
    ...segment,
    draw(pen, shown) {
      segment.draw(pen, shown);
      const x = side === "left" ? 3 : segment.length - 3;
      if (x < shown.from + 1 || x > shown.to - 1) return;
      if (end.name === "offset") arrow(pen, x, segment.half);
      else centreMark(pen, x, segment.half);
    },
  };
}

function arrow(pen: Pen, x: number, half: number): void {
  const top = -half + 0.7;
  const bottom = half - 0.8;
  pen.box([x - 1.3, top], 2.6, bottom - top, { fill: "metal", stroke: "none" });
  pen.line([x, bottom], [x, top + 1], { stroke: "bold", data: { edge: "offset-arrow" } });
  pen.polygon(
    [
      [x, top],
      [x - 1, top + 1.6],
      [x + 1, top + 1.6],
    ],
    { fill: "ink", stroke: "none" },
  );
}

function centreMark(pen: Pen, x: number, half: number): void {
  pen.box([x - 0.7, -half + 0.4], 1.4, half * 2 - 0.8, { fill: "metal", stroke: "none" });
  pen.line([x, -half + 0.7], [x, half - 0.7], { stroke: "bold", data: { edge: "centre-mark" } });
}

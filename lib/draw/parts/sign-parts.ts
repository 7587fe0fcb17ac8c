import type { SignName } from "../../model/signs.ts";
import type { Pen } from "../canvas.ts";
import { arrow } from "./arrow.ts";
import { boneDots, boxRim } from "./bone.ts";
import { dimension } from "./section/dimension.ts";
import { signalMark } from "./signal-mark.ts";
import { squareMark } from "./square-mark.ts";
import { tickBox } from "./tick-box.ts";
import { drawLookAlikeStrip } from "./tray/look-alike-strip.ts";
import { turnArrow } from "./turn-arrow.ts";

/** The side of the square that every sign is drawn in, mm. */
export const signSide = 12;
const [from, to, middle] = [1, 11, 6];
const whole = boxRim([from, from], to - from, to - from);

/** What each sign says, and its drawing. */
export const signParts: Readonly<
  Record<SignName, { readonly says: string; readonly draw: (pen: Pen) => void }>
> = {
  arrow: {
    says: "this way, or look here",
    draw: (pen) => arrow(pen, [from, middle], [to, middle]),
  },
  "turning arrow": {
    says: "turned by hand or driver",
    draw: (pen) => turnArrow(pen, { width: 9, height: signSide, axis: middle }),
  },
  "right angle": {
    says: "stands square on the plate",
    draw: (pen) => {
      pen.line([4, from], [4, to], { stroke: "bold" });
      squareMark(pen, { plate: { from: 2, to: 4 }, axis: 0, height: signSide });
    },
  },
  "limiter's signal": {
    says: "the limiter gives its one signal",
    draw: (pen) => signalMark(pen, [middle, middle]),
  },
  "box to tick": { says: "still to do", draw: (pen) => tickBox(pen, [3, 3], middle, false) },
  "ticked box": { says: "done", draw: (pen) => tickBox(pen, [3, 3], middle, true) },
  "look-alike strip": {
    says: "looks like something else near it",
    draw: (pen) =>
      pen.group("strip", { at: [5, from] }, (inner) => drawLookAlikeStrip(inner, to - from)),
  },
  cortex: {
    says: "bone, its hard outside; not anatomy",
    draw: (pen) => boneDots(pen, "cortex", whole),
  },
  "bone within": {
    says: "bone, its inside; not anatomy",
    draw: (pen) => boneDots(pen, "marrow", whole),
  },
  metal: {
    says: "metal",
    draw: (pen) => pen.box([from, from], to - from, to - from, { fill: "metal", stroke: "bold" }),
  },
  "measured size": {
    says: "a size, its number beside it",
    draw: (pen) => dimension(pen, { name: "sign", size: to - from }, [from, middle], [to, middle]),
  },
  "hidden edge": {
    says: "an edge behind metal, or a place kept free",
    draw: (pen) => pen.line([from, middle], [to, middle], { dash: "hidden" }),
  },
  "centre line": {
    says: "an axis, or the place that was aimed at",
    draw: (pen) => pen.line([from, middle], [to, middle], { dash: "centre" }),
  },
};

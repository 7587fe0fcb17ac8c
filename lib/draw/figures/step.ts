import type { Pictures, StepParts } from "../../model/figure.ts";
import type { Verb } from "../../model/recipe.ts";
import { drawFigure } from "../canvas.ts";
import { type StepDrawing, sceneOf, throughBone } from "../parts/scene.ts";
import { aimGuide } from "./steps/aim-guide.ts";
import { confirm } from "./steps/confirm.ts";
import { count } from "./steps/count.ts";
import { countersink } from "./steps/countersink.ts";
import { drillGliding } from "./steps/drill-gliding.ts";
import { drillPilot } from "./steps/drill-pilot.ts";
import { driveScrew } from "./steps/drive-screw.ts";
import { finalPass } from "./steps/final-pass.ts";
import { hold } from "./steps/hold.ts";
import { measure } from "./steps/measure.ts";
import { placeInsert } from "./steps/place-insert.ts";
import { readMarks } from "./steps/read-marks.ts";
import { seatHooks } from "./steps/seat-hooks.ts";
import { takeOut } from "./steps/take-out.ts";
import { takeOutWires } from "./steps/take-out-wires.ts";
import { tap } from "./steps/tap.ts";
import { tightenByHand } from "./steps/tighten-by-hand.ts";
import { tightenToLimit } from "./steps/tighten-to-limit.ts";
import { turnInSleeve } from "./steps/turn-in-sleeve.ts";
import { watchGap } from "./steps/watch-gap.ts";

const pilotEnds = {
  "both-cortices": "through both sides of the bone",
  "near-cortex": "into the near cortex only",
  "surgeon-decides": "into the bone, as deep as the surgeon decides",
} as const;

/** Where the pilot drill goes: a gliding hole already opens the near side. */
const pilotWords = (drilled: StepParts["drilled"]): string =>
  drilled?.gliding && throughBone(drilled)
    ? "through the far side of the bone"
    : pilotEnds[drilled?.pilot ?? "both-cortices"];

/** What each verb's frame shows, in words, and its drawing. */
export const stepDrawings: Readonly<
  Record<
    Verb,
    { readonly words: string | ((parts: StepParts) => string); readonly draw: StepDrawing }
  >
> = {
  confirm: { words: "An eye looks; a box is ticked.", draw: confirm },
  hold: { words: "A forceps holds the plate on the bone.", draw: hold },
  "seat-hooks": {
    words: "The plate's hooks are pressed over the edge of the bone.",
    draw: seatHooks,
  },
  "aim-guide": { words: "The guide's end stands in its hole on the drill's line.", draw: aimGuide },
  "turn-in-sleeve": {
    words: "The threaded sleeve is turned by hand into the hole, square to the plate.",
    draw: turnInSleeve,
  },
  "drill-pilot": {
    words: ({ drilled }) => `The pilot drill goes through its guide ${pilotWords(drilled)}.`,
    draw: drillPilot,
  },
  "drill-gliding": { words: "The gliding drill opens the near cortex only.", draw: drillGliding },
  "place-insert": { words: "The insert slides into the gliding hole.", draw: placeInsert },
  "take-out": { words: "The tool comes out of the plate.", draw: takeOut },
  measure: {
    words: ({ drilled }) =>
      `The depth gauge rests on the plate, its ${throughBone(drilled) ? "hook behind the far side of the bone" : "tip at the end of the drilled hole"}.`,
    draw: measure,
  },
  "read-marks": { words: "The mark on the drill is read where the sleeve ends.", draw: readMarks },
  tap: {
    words: ({ drilled }) =>
      `The tap is turned into the drilled hole${drilled?.tapped === "near-cortex" ? ", in the near cortex only" : ""}.`,
    draw: tap,
  },
  countersink: {
    words: "The countersink cuts a seat into the bone, outside the plate.",
    draw: countersink,
  },
  "drive-screw": { words: "The screw goes in on its driver.", draw: driveScrew },
  "watch-gap": {
    words: "The gap between two pieces of bone closes under the plate.",
    draw: watchGap,
  },
  "tighten-by-hand": {
    words: "Shaft and handle turn the seated screw tight.",
    draw: tightenByHand,
  },
  "tighten-to-limit": {
    words: "Shaft, torque limiter and handle turn the seated screw until one signal.",
    draw: tightenToLimit,
  },
  "take-out-wires": { words: "The temporary wires are drawn out.", draw: takeOutWires },
  "final-pass": {
    words: "Every screw is tightened once more; each has a box to tick.",
    draw: finalPass,
  },
  count: { words: "A tally is counted and the number written down.", draw: count },
};

/** One frame of a storyboard: the verb's own drawing from the chain's own parts, at one scale, within the size (mm). */
export const step: Pictures["step"] = (id, verb, parts, interfaces, size) => {
  const { words, draw } = stepDrawings[verb];
  const told = typeof words === "string" ? words : words(parts);
  const scene = sceneOf(parts, interfaces, size);
  const about = { title: verb.replaceAll("-", " "), description: told, ...size };
  return drawFigure(id, about, (pen) =>
    pen.group("step", { data: { verb, scale: scene.scale } }, (group) => draw(group, scene)),
  );
};

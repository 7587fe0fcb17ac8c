import type { Pen, Spot } from "../../canvas.ts";
import type { HolePart } from "../hole-part.ts";

/** A threaded hole: a dark toothed ring. */
export const threaded: HolePart = {
  id: "threaded",
  label: "threaded",
  draw(pen, { through }) {
    drawRim(pen, through);
    drawTeeth(pen, through);
  },
  samples: [{ through: 5 }],
};

const depthOf = (through: number): number => Math.min(0.55, through * 0.13);

/** The dark ring around a threaded hole, its middle at the origin. */
export function drawRim(pen: Pen, through: number): void {
  const rim = through / 2 + depthOf(through) + Math.min(0.6, through * 0.14);
  pen.circle([0, 0], rim, { fill: "ink", stroke: "none", data: { edge: "rim" } });
}

/** The opening inside the ring: crests stand on the through width. */
export function drawTeeth(pen: Pen, through: number): void {
  const teeth = Math.max(9, Math.min(16, Math.round((Math.PI * through) / 1)));
  const crest = through / 2;
  const root = crest + depthOf(through);
  const spots = Array.from({ length: teeth * 2 }, (_, index): Spot => {
    const angle = (index * Math.PI) / teeth;
    const radius = index % 2 === 0 ? crest : root;
    return [radius * Math.cos(angle), radius * Math.sin(angle)];
  });
  pen.polygon(spots, { fill: "metal", stroke: "none", data: { edge: "through", through } });
}

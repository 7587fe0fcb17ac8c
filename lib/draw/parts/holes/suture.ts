import type { HolePart } from "../hole-part.ts";

/** A suture hole: a small ring with a bar across. */
export const suture: HolePart = {
  id: "suture",
  label: "suture hole",
  draw(pen, { through }) {
    const radius = through / 2;
    const out = radius + Math.max(0.5, radius * 0.5);
    pen.circle([0, 0], radius, { fill: "metal", data: { edge: "through", through } });
    pen.line([-out, 0], [out, 0], { stroke: "bold" });
  },
  samples: [{ through: 3 }],
};

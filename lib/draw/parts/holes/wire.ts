import type { HolePart } from "../hole-part.ts";

/** A wire hole: a small cross as wide as the hole. */
export const wire: HolePart = {
  id: "wire",
  label: "wire hole",
  draw(pen, { through }) {
    const arm = through / 2;
    pen.circle([0, 0], arm + 0.35, { fill: "metal", stroke: "none" });
    pen.line([-arm, 0], [arm, 0], { stroke: "bold", data: { edge: "through", through } });
    pen.line([0, -arm], [0, arm], { stroke: "bold" });
  },
  samples: [{ through: 3 }],
};

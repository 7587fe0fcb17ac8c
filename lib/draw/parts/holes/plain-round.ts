import type { HolePart } from "../hole-part.ts";

/** A plain round hole: a ring, the seat outside and the through width inside. */
export const plainRound: HolePart = {
  id: "plain-round",
  label: "plain round",
  draw(pen, { through, seat = through * 1.4 }) {
    pen.circle([0, 0], seat / 2, { fill: "metal", data: { edge: "seat", seat } });
    pen.circle([0, 0], through / 2, { fill: "metal", data: { edge: "through", through } });
  },
  samples: [{ through: 5, seat: 7.4 }],
};

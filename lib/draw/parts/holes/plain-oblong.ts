import type { HolePart } from "../hole-part.ts";
import { drawStadium } from "./stadium.ts";

/** An oblong hole: a stadium, the seat outside and the slot inside. */
export const plainOblong: HolePart = {
  id: "plain-oblong",
  label: "oblong",
  draw(pen, { through, seat = through * 1.4, slot = through * 1.5 }) {
    drawStadium(pen, slot + seat - through, seat, { fill: "metal", data: { edge: "seat", seat } });
    drawStadium(pen, slot, through, { fill: "metal", data: { edge: "through", through, slot } });
  },
  samples: [{ through: 5, seat: 7.4, slot: 9 }],
};

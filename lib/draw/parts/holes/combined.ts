import type { HolePart } from "../hole-part.ts";
import { drawStadium } from "./stadium.ts";
import { drawRim, drawTeeth } from "./threaded.ts";

/** A combined opening: the dark toothed ring to the left and the plain part to the right, joined. */
export const combined: HolePart = {
  id: "combined",
  label: "combined opening (threaded part / plain part)",
  draw(pen, { through, beside = { through, apart: through * 1.3 } }) {
    const { seat = beside.through * 1.4, slot = beside.through } = beside;
    const threadedAt = { at: [-beside.apart / 2, 0] } as const;
    const plainAt = { at: [beside.apart / 2, 0] } as const;
    pen.group("plain-part", plainAt, (inner) => {
      drawStadium(inner, slot + seat - beside.through, seat, {
        fill: "metal",
        data: { edge: "seat", seat },
      });
    });
    pen.group("threaded-part", threadedAt, (inner) => drawRim(inner, through));
    pen.group("plain-part", plainAt, (inner) => {
      drawStadium(inner, slot, beside.through, {
        fill: "metal",
        data: { edge: "plain-through", through: beside.through, slot },
      });
    });
    pen.group("threaded-part", threadedAt, (inner) => drawTeeth(inner, through));
    pen.group("plain-part", plainAt, (inner) => {
      drawStadium(inner, slot - 0.35, beside.through - 0.35, { fill: "metal", stroke: "none" });
    });
  },
  samples: [{ through: 4.6, beside: { through: 4.8, seat: 7, slot: 7, apart: 5.6 } }],
};

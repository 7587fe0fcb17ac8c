import type { Spot } from "../../canvas.ts";
import type { Segment } from "../shape.ts";
import { drawProfile } from "./profile.ts";

const rib = 2.4;
const groove = 0.9;

/** A ribbed grip: rounded ribs with grooves between, mm. */
export function grip(length: number, diameter: number): Segment {
  const half = diameter / 2;
  const ribs = Math.max(2, Math.round(length / (rib + groove)));
  const step = length / ribs;
  const edge = (sign: number, from: number, to: number): Spot[] => {
    const spots: Spot[] = [];
    for (let index = 0; index < ribs; index += 1) {
      const x = index * step;
      const high = half;
      const low = half - Math.min(0.8, half * 0.18);
      spots.push(
        [x, sign * low],
        [x + 0.25 * step, sign * high],
        [x + 0.75 * step, sign * high],
        [x + step, sign * low],
      );
    }
    const level = (x: number): number =>
      (spots.find((spot) => spot[0] >= x - 0.001) ?? [0, sign * half])[1];
    return [
      [from, level(from)],
      ...spots.filter((spot) => spot[0] > from && spot[0] < to),
      [to, level(to)],
    ];
  };
  return {
    length,
    half,
    draw(pen, shown) {
      const { from, to } = shown;
      drawProfile(pen, edge(-1, from, to), edge(1, from, to), shown, "both", {
        edge: "grip",
        diameter,
      });
      for (let index = 1; index < ribs; index += 1) {
        const x = index * step;
        const low = half - Math.min(0.8, half * 0.18);
        if (x > from && x < to) pen.line([x, -low], [x, low], { stroke: "hair" });
      }
    },
  };
}

import type { PathPiece, Spot } from "../../canvas.ts";
import type { Segment } from "../shape.ts";
import { drawProfile } from "./profile.ts";

const pointAngle = 118;

/** The fluted end of a twist drill with its point, mm: two helical flutes as dark bands that climb to the right. */
export function flutes(length: number, diameter: number): Segment {
  const half = diameter / 2;
  const point = half / Math.tan(((pointAngle / 2) * Math.PI) / 180);
  const climb = diameter * 1.15;
  const pitch = diameter * 1.5;
  const land = Math.max(0.45, diameter * 0.3);
  return {
    length,
    half,
    draw(pen, shown) {
      const { from, to } = shown;
      const side = (sign: number): Spot[] => {
        const spots: Spot[] = [
          [Math.max(from, point), sign * half],
          [to, sign * half],
        ];
        return shown.cutLeft ? spots : [[0, 0], ...spots];
      };
      drawProfile(pen, side(-1), side(1), shown, "none", { edge: "body", diameter });
      for (let x = point * 0.9; x + climb + land < Math.min(to, length - half); x += pitch) {
        if (x >= from)
          pen.path(flute(x, half, climb, land), {
            fill: "ink",
            stroke: "none",
            data: { edge: "flute" },
          });
      }
    },
  };
}

function flute(x: number, half: number, climb: number, land: number): PathPiece[] {
  const bend = climb * 0.36;
  return [
    ["M", x, half],
    ["C", x + bend * 0.25, half * 0.55, x + climb - bend * 0.25, -half * 0.55, x + climb, -half],
    ["L", x + climb + land, -half],
    ["C", x + climb + land - bend, -half * 0.55, x + land + bend, half * 0.55, x + land, half],
    ["Z"],
  ];
}

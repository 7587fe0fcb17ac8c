import type { Spot } from "../../canvas.ts";
import type { Segment } from "../shape.ts";
import { drawProfile, type Ends } from "./profile.ts";

/** What a rod may carry besides its outline, mm. `bands` and `rings` are places along the rod. */
export type RodMarks = {
  readonly bands?: readonly number[];
  readonly rings?: readonly number[];
  readonly chamfer?: number;
  readonly ends?: Ends;
  /** How far the rod's middle stands below the axis. */
  readonly drop?: number;
  readonly data?: Readonly<Record<string, string | number>>;
};

/** Width of a ring ground on a shank, mm. */
export const bandWidth = 0.8;

/** A cylinder seen from the side. */
export function rod(length: number, diameter: number, marks: RodMarks = {}): Segment {
  const { bands = [], rings = [], chamfer = 0, drop = 0 } = marks;
  const half = diameter / 2;
  return {
    length,
    half: half + Math.abs(drop),
    draw(pen, shown) {
      const side = (sign: number): Spot[] => {
        const spots: Spot[] = [
          [Math.max(shown.from, chamfer), drop + sign * half],
          [shown.to, drop + sign * half],
        ];
        return chamfer > 0 && !shown.cutLeft
          ? [[0, drop + sign * (half - chamfer)], ...spots]
          : spots;
      };
      drawProfile(pen, side(-1), side(1), shown, marks.ends, {
        edge: "body",
        diameter,
        ...marks.data,
      });
      for (const x of bands.filter((band) => band >= shown.from && band + bandWidth <= shown.to)) {
        pen.box([x, drop - half], bandWidth, diameter, {
          fill: "ink",
          stroke: "hair",
          data: { edge: "band" },
        });
      }
      for (const x of rings.filter((ring) => ring >= shown.from && ring <= shown.to)) {
        pen.line([x, drop - half], [x, drop + half], { stroke: "hair", data: { edge: "mark" } });
      }
    },
  };
}

import type { Pen } from "../canvas.ts";
import type { Scene } from "./scene.ts";

/** A heavy bar across the end of a hole of a width (paper mm), where the drill stops. */
export function stopMark(pen: Pen, { axis }: Scene, tip: number, width: number): void {
  const reach = width / 2 + 2;
  pen.line([tip - 1, axis - reach], [tip - 1, axis + reach], {
    stroke: "heavy",
    data: { mark: "stop" },
  });
}

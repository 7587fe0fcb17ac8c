import { holeParts } from "../../parts/hole-parts.ts";
import type { StepDrawing } from "../../parts/scene.ts";
import { tickBox } from "../../parts/tick-box.ts";

/** An eye on the hole that is meant, and a box to tick. */
export const confirm: StepDrawing = (pen, { width, height, parts, scale }) => {
  const y = height / 2;
  const eye = width * 0.17;
  const [reach, lid] = [width * 0.12, height * 0.3];
  pen.path(
    [
      ["M", eye - reach, y],
      ["C", eye - reach * 0.5, y - lid, eye + reach * 0.5, y - lid, eye + reach, y],
      ["C", eye + reach * 0.5, y + lid, eye - reach * 0.5, y + lid, eye - reach, y],
      ["Z"],
    ],
    { fill: "metal", stroke: "bold" },
  );
  pen.circle([eye, y], lid * 0.5, { fill: "metal", stroke: "bold" });
  pen.circle([eye, y], lid * 0.24, { fill: "ink", stroke: "none" });
  pen.line([eye + reach + 1.2, y], [width * 0.4, y], { stroke: "bold", dash: "hidden" });
  const { zone } = parts;
  const through = ((zone?.through ?? 4000) / 1000) * scale;
  const seat = zone && "seat" in zone ? (zone.seat / 1000) * scale : undefined;
  const slot = zone && "slot" in zone ? (zone.slot / 1000) * scale : undefined;
  pen.group("hole", { at: [width * 0.53, y] }, (group) =>
    holeParts[zone?.kind ?? "plain-round"].draw(group, { through, seat, slot }),
  );
  const side = Math.min(height * 0.5, width * 0.22);
  tickBox(pen, [width * 0.72, y - side / 2], side, true);
};

import type { Spot } from "../../canvas.ts";
import { arrow } from "../../parts/arrow.ts";
import { boneDots, boneFoot, notAnatomy } from "../../parts/bone.ts";
import type { StepDrawing } from "../../parts/scene.ts";

/** The plate from the side, its hooks reaching over the edge of the bone and pressed home. */
export const seatHooks: StepDrawing = (pen, { width, height, scale, parts }) => {
  const thick = Math.min(((parts.plateThickness ?? 2000) / 1000) * scale, 3);
  const [edge, top] = [width * 0.3, height * 0.42];
  const right = width - 0.6;
  const bottom = boneFoot(height);
  const depth = Math.min(((parts.hooks?.depth ?? 5000) / 1000) * scale, bottom - top - 0.8);
  const corner: readonly Spot[] = [
    [right, top],
    [edge + 2.5, top],
    [edge + 0.8, top + 0.8],
    [edge, top + 3],
    [edge, bottom],
    [right, bottom],
  ];
  boneDots(pen, "marrow", corner);
  pen.path(
    [
      ["M", right, top],
      ["L", edge + 2.5, top],
      ["C", edge + 0.6, top, edge, top + 0.8, edge, top + 3],
      ["L", edge, bottom],
    ],
    { stroke: "bold" },
  );
  const out = edge - thick - 0.2;
  const tip = top + depth;
  pen.path(
    [
      ["M", right, top - thick],
      ["L", edge + 1.6, top - thick],
      ["C", out + 0.2, top - thick, out, top - 0.4, out, top + 2],
      ["C", out, tip - 1.5, edge - 1, tip - 0.4, edge + 1.6, tip],
      ["C", edge + 0.2, tip - 1.2, edge - 0.2, tip - 2, edge - 0.2, top + 1.6],
      ["C", edge - 0.2, top + 0.4, edge + 0.8, top - 0.2, edge + 2.4, top - 0.2],
      ["L", right, top - 0.2],
    ],
    { fill: "metal", stroke: "bold" },
  );
  arrow(pen, [width * 0.62, 0.4], [width * 0.62, top - thick - 0.4]);
  const count = parts.hooks?.count;
  if (count !== undefined)
    pen.words([0.6, 4], count === 1 ? "1 hook" : `${count} hooks`, { size: "body", weight: 600 });
  notAnatomy(pen, [edge + 2, height], right - edge - 3);
};

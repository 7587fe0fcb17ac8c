import { drawBone } from "../../parts/bone.ts";
import { drawHolder } from "../../parts/drill-holder.ts";
import { drawPlateSection } from "../../parts/plate-section.ts";
import { pilotEnd, pilotWidth, type StepDrawing } from "../../parts/scene.ts";
import { drawTool, toolShape } from "../../parts/tool.ts";

/** The mark on the drill's shank is read where the sleeve ends. */
export const readMarks: StepDrawing = (pen, scene) => {
  const { parts, width, height, axis } = scene;
  const end = width * 0.76;
  drawBone(pen, scene);
  drawPlateSection(pen, scene);
  if (parts.drill) drawTool(pen, scene, toolShape(scene, parts.drill), pilotEnd(scene), end);
  const half = pilotWidth(scene) / 2;
  pen.box([end - 1, axis - half], width - end, half * 2, { fill: "metal" });
  for (const [at, x] of [end + 1.4, end + 4.2, end + 7].entries())
    pen.line([x, axis - half], [x, axis + half], { stroke: at === 0 ? "heavy" : "bold" });
  drawHolder(pen, scene, end);
  const [x, y] = [end + 1.4, axis + half + 0.8];
  pen.polygon(
    [
      [x, y],
      [x - 1.5, y + 3],
      [x + 1.5, y + 3],
    ],
    { fill: "ink", stroke: "none" },
  );
  pen.line([x, y + 2.6], [x, Math.min(height - 0.6, y + 5)], { stroke: "heavy" });
};

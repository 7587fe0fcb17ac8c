import { arrow } from "../../parts/arrow.ts";
import { drawBone } from "../../parts/bone.ts";
import { drawPlateSection } from "../../parts/plate-section.ts";
import type { StepDrawing } from "../../parts/scene.ts";
import { drawTool, toolShape } from "../../parts/tool.ts";

/** The guide's named end in or on its hole, on the line the drill will take. */
export const aimGuide: StepDrawing = (pen, scene) => {
  const { parts, plate, axis, width, height, bone } = scene;
  drawBone(pen, scene);
  drawPlateSection(pen, scene);
  pen.line([bone.far - 1.8, axis], [plate.from, axis], { stroke: "line", dash: "centre" });
  const { guide } = parts;
  const rests = guide?.kind === "plain-guide" && guide.rests_on !== "plate-hole";
  if (guide)
    drawTool(
      pen,
      scene,
      toolShape(scene, guide, parts.guideEnd),
      rests ? plate.to - (plate.to - plate.from) * 0.2 : plate.from + 0.4,
    );
  arrow(pen, [width - 1, height - 2], [plate.to + 4, height - 2]);
};

import { arrow } from "../../parts/arrow.ts";
import { drawBone } from "../../parts/bone.ts";
import { drawPlateSection } from "../../parts/plate-section.ts";
import { glidingEnd, type StepDrawing } from "../../parts/scene.ts";
import { drawShortened, toolShape } from "../../parts/tool.ts";

/** The insert slides through the plate into the gliding hole. */
export const placeInsert: StepDrawing = (pen, scene) => {
  const { parts, width, height, plate } = scene;
  drawBone(pen, scene);
  drawPlateSection(pen, scene);
  if (parts.insert)
    drawShortened(
      pen,
      scene,
      toolShape(scene, parts.insert),
      glidingEnd(scene) + 0.4,
      width - 1.5,
      9,
    );
  arrow(pen, [width - 1, height - 2], [plate.to + 5, height - 2]);
};

import { drawBone } from "../../parts/bone.ts";
import { drawPlateSection } from "../../parts/plate-section.ts";
import type { StepDrawing } from "../../parts/scene.ts";
import { squareMark } from "../../parts/square-mark.ts";
import { drawShortened, toolShape } from "../../parts/tool.ts";
import { turnArrow } from "../../parts/turn-arrow.ts";

/** The sleeve turned by hand into the threaded hole, square to the plate. */
export const turnInSleeve: StepDrawing = (pen, scene) => {
  const { parts, plate, width } = scene;
  drawBone(pen, scene);
  drawPlateSection(pen, scene);
  if (parts.sleeve)
    drawShortened(pen, scene, toolShape(scene, parts.sleeve), plate.from + 0.3, width - 6.4, 7);
  squareMark(pen, scene);
  turnArrow(pen, scene);
};

import type { Defined } from "../../model/definition.ts";
import { mm } from "../../model/measure.ts";
import type { DrawnPlate } from "../../model/plate.ts";
import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";

const order: readonly DrawnPlate["stiffness"][] = ["thin-shell", "malleable", "stiff"];
const thin = (thickness: number) => ({
  "plate/thin": {
    name: "thin plate",
    mark: "TS",
    family: "thin",
    side: "none",
    stiffness: "thin-shell",
    thickness: { shaft: thickness },
    variants: [{ holes: 3, length: 42 }],
    proximal: "start",
    end_cue: "either end",
    up_face: "The etched face lies up.",
    outline: [{ at: [0, -5] }, { from: "end", at: [0, -5] }, { from: "end", at: [0, 5] }],
    tail: 8,
    row: { prefix: "S", opening: "t27", first: [8, 0], pitch: 13, region: "shaft" },
    source: { document: "pebblefin-ifu", section: "Table 1" },
  },
});

/** Of two plates of a library the one that is called stiffer is not the thinner. */
export const stiffPlateIsTheThicker: Rule = {
  id: "stiff-plate-is-the-thicker",
  severity: "sign",
  about: "plate",
  summary:
    "In head and shaft a plate called stiff is at least as thick as the shaft of any called malleable, and that as the shaft of any called a thin shell.",
  why: "Theatre staff tell the plates apart by eye and by thickness; a stiff plate of 0.5 mm is a slip of the pen, or its word is.",
  fix: "Compare thickness and stiffness with the drawing; sign where shape or metal, not thickness, makes it stiff.",
  source: "common practice",
  *check({ catalogue }) {
    const drawn = [...catalogue.plates.values()].filter(
      (plate): plate is Defined<DrawnPlate> => "thickness" in plate,
    );
    for (const { file, name, stiffness, thickness } of drawn) {
      const softer = drawn.filter(
        (other) => order.indexOf(other.stiffness) < order.indexOf(stiffness),
      );
      for (const [part, thick] of Object.entries(thickness)) {
        const thicker = softer.find((other) => other.thickness.shaft > thick);
        if (thicker)
          yield {
            file,
            path: ["thickness", part],
            message: `Expected ${name} (${stiffness}) to be at least as thick as ${thicker.name} (${thicker.stiffness}, ${mm(thicker.thickness.shaft)}), got a ${part} of ${mm(thick)}`,
          };
      }
    }
  },
  examples: [
    passes("as thick as the thin one", "Head 1.6, shaft 2.4; thin shell 1.6.", thin(1.6)),
    fails("a thousandth thinner", "Head 1.6, shaft 2.4; thin shell 1.601.", thin(1.601)),
  ],
};

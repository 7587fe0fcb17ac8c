import { mm } from "../../model/measure.ts";
import type { Criteria } from "./ask.ts";

/** A tap is found by the screw's own thread, outer diameter and pitch, and must pass the hole. */
export const tapCriteria: Criteria<"tap"> = {
  diameter: ({ diameter }, { screw: { major } }) =>
    diameter === major ? undefined : `diameter ${mm(diameter)}; tap ${mm(major)} is asked`,
  pitch: ({ pitch }, { screw }) =>
    pitch === screw.pitch ? undefined : `pitch ${mm(pitch)}; pitch ${mm(screw.pitch)} is asked`,
  passes: ({ diameter }, { zone: { through } }) =>
    diameter <= through
      ? undefined
      : `tap ${mm(diameter)} does not pass ${mm(through)}, the width of the hole`,
};

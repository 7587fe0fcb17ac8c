import { mm } from "../../model/measure.ts";
import type { Ask, Criteria } from "./ask.ts";

const wantedUse = ({ query }: Ask): "pilot" | "gliding" => ("use" in query ? query.use : "pilot");

/** A drill is found by what it is for and by the diameter that the screw states for that. */
export const drillCriteria: Criteria<"drill"> = {
  use: ({ use }, ask) =>
    use === wantedUse(ask) ? undefined : `a ${use} drill; a ${wantedUse(ask)} drill is asked`,
  diameter: ({ diameter }, ask) => {
    const wanted = wantedUse(ask) === "gliding" ? ask.screw.gliding : ask.screw.pilot;
    if (wanted === undefined) return "the screw states no gliding drill";
    return diameter === wanted
      ? undefined
      : `diameter ${mm(diameter)}; drill ${mm(wanted)} is asked`;
  },
};

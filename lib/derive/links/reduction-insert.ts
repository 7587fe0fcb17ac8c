import { mm } from "../../model/measure.ts";
import type { Criteria } from "./ask.ts";
import { boreFault } from "./clearance.ts";

/** Greatest play of an insert in the gliding hole, allowed, micrometres. */
const greatest = 200;

/** A reduction insert is found by an outside that fills the gliding hole and a bore that guides the pilot drill. */
export const reductionInsertCriteria: Criteria<"reduction-insert"> = {
  outer: ({ outer }, { screw: { gliding } }) => {
    if (gliding === undefined) return "the screw states no gliding drill";
    const play = gliding - outer;
    if (play >= 0 && play <= greatest) return undefined;
    const words = play < 0 ? `is ${mm(-play)} wider than` : `leaves ${mm(play)} in`;
    return `outside ${mm(outer)} ${words} the gliding hole ${mm(gliding)}; 0 to 0.20 is asked`;
  },
  bore: ({ bore }, { screw }) => boreFault(bore, screw.pilot),
};

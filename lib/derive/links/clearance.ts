import { mm, type Um } from "../../model/measure.ts";

/** Least and greatest play of a drill in its bore, both allowed, micrometres. */
const [least, greatest] = [50, 200] as const;

/** Why a bore does not guide a drill of this diameter; undefined where its play is 0.05 to 0.20 mm. Micrometres. */
export function boreFault(bore: Um, drill: Um): string | undefined {
  const play = bore - drill;
  if (play >= least && play <= greatest) return undefined;
  const words = play < 0 ? `is ${mm(-play)} narrower than` : `leaves ${mm(play)} over`;
  return `bore ${mm(bore)} ${words} drill ${mm(drill)}; 0.05 to 0.20 is asked`;
}

import { grown, overlaps } from "./box.ts";
import type { LabelCandidate } from "./label-candidate.ts";
import { stretchesMeet, stretchMeetsBox } from "./stretch.ts";

const clear = 0.35;

/** Whether two labels' places cannot both be used: their boxes or leaders meet, or one's leader meets the other's box. */
export function labelsClash(a: LabelCandidate, b: LabelCandidate): boolean {
  if (overlaps(grown(a.box, clear), b.box)) return true;
  if (a.leader && stretchMeetsBox(a.leader, grown(b.box, clear))) return true;
  if (b.leader && stretchMeetsBox(b.leader, grown(a.box, clear))) return true;
  return a.leader !== undefined && b.leader !== undefined && stretchesMeet(a.leader, b.leader);
}

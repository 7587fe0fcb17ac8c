import { grown, overlaps } from "./box.ts";
import { type LabelCandidate, labelClear } from "./label-candidate.ts";
import { stretchesMeet, stretchMeetsBox } from "./stretch.ts";

/** Whether two labels' places cannot both be used: their boxes or leaders meet, or one's leader meets the other's box. */
export function labelsClash(a: LabelCandidate, b: LabelCandidate): boolean {
  if (!overlaps(a.extent, b.extent)) return false;
  if (overlaps(a.box, b.box, labelClear)) return true;
  if (a.leader && stretchMeetsBox(a.leader, grown(b.box, labelClear))) return true;
  if (b.leader && stretchMeetsBox(b.leader, grown(a.box, labelClear))) return true;
  return a.leader !== undefined && b.leader !== undefined && stretchesMeet(a.leader, b.leader);
}

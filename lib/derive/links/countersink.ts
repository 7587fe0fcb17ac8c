import { mm } from "../../model/measure.ts";
import type { Criteria } from "./ask.ts";

/** A countersink is found by the form and the diameter of the screw's head. */
export const countersinkCriteria: Criteria<"countersink"> = {
  form: ({ form }, { screw: { head } }) =>
    form === head.form ? undefined : `a ${form} cut; the head is ${head.form}`,
  head: ({ head: cut }, { screw: { head } }) =>
    cut === head.diameter ? undefined : `cut ${mm(cut)}; head ${mm(head.diameter)} is asked`,
};

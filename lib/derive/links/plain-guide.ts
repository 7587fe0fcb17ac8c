import { mm } from "../../model/measure.ts";
import type { Ask, Criteria } from "./ask.ts";
import { boreFault } from "./clearance.ts";

type GuideAsk = Extract<Ask["query"], { kind: "plain-guide" }>;

function asked({ query }: Ask): GuideAsk {
  if (query.kind !== "plain-guide") throw new Error("A guide is judged by a guide's query");
  return query;
}

/** A plain guide is found by its use, its bore, the end the technique asks for, and a foot that the hole takes. */
export const plainGuideCriteria: Criteria<"plain-guide"> = {
  use: ({ use }, ask) =>
    use === asked(ask).use
      ? undefined
      : `a guide for the ${use} drill; one for the ${asked(ask).use} drill is asked`,
  bore: ({ bore }, ask) => {
    const drill = asked(ask).use === "gliding" ? ask.screw.gliding : ask.screw.pilot;
    return drill === undefined ? "the screw states no gliding drill" : boreFault(bore, drill);
  },
  end: ({ ends }, ask) =>
    ends.some(({ name }) => name === asked(ask).end) ? undefined : `no ${asked(ask).end} end`,
  rest: ({ rests_on }, ask) =>
    asked(ask).use === "pilot" || rests_on === "seat"
      ? undefined
      : `rests on the ${rests_on}; a gliding guide rests on the seat`,
  foot: ({ ends, rests_on }, ask) => {
    const end = ends.find(({ name }) => name === asked(ask).end);
    if (end === undefined) return undefined;
    if (rests_on !== "seat")
      return end.foot <= ask.zone.through
        ? undefined
        : `foot ${mm(end.foot)} does not pass ${mm(ask.zone.through)}, the width of the hole`;
    if (!("seat" in ask.zone)) return "the hole has no seat to rest on";
    return end.foot <= ask.zone.seat
      ? undefined
      : `foot ${mm(end.foot)} is wider than the seat, ${mm(ask.zone.seat)}`;
  },
};

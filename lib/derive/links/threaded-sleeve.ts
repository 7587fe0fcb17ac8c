import type { Criteria } from "./ask.ts";
import { boreFault } from "./clearance.ts";

/** A threaded sleeve is found by the hole's thread and by a bore that guides the pilot drill. */
export const threadedSleeveCriteria: Criteria<"threaded-sleeve"> = {
  thread: ({ thread }, { zone }) => {
    if (zone.kind !== "threaded") return "the hole has no thread for a sleeve";
    return thread === zone.thread ? undefined : `thread ${thread}; thread ${zone.thread} is asked`;
  },
  bore: ({ bore }, { screw }) => boreFault(bore, screw.pilot),
};

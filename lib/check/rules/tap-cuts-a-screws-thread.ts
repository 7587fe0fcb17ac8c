import { mm } from "../../model/measure.ts";
import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";

/** A tap cuts the thread of a plain-head screw of its system. */
export const tapCutsAScrewsThread: Rule = {
  id: "tap-cuts-a-screws-thread",
  severity: "sign",
  about: "instrument",
  summary: "Diameter and pitch of a tap are those of a plain-head screw of its system.",
  why: "A tap of another pitch strips what the screw then needs; and a chain that finds no tap prints that the tray has none.",
  fix: "Compare diameter and pitch of tap and screw with the drawings.",
  source: "common practice",
  needsAll: ["screw"],
  *check({ catalogue }) {
    for (const tap of catalogue.instruments.values()) {
      if (tap.kind !== "tap") continue;
      const screws = [...catalogue.screws.values()].filter(
        ({ system, major, class: kind }) =>
          kind !== "locking" &&
          major === tap.diameter &&
          (tap.system === "general" || system === tap.system),
      );
      if (screws.some(({ pitch }) => pitch === tap.pitch)) continue;
      const pitches = [...new Set(screws.map(({ pitch }) => mm(pitch)))].join(" or ");
      yield {
        file: tap.file,
        path: [screws.length > 0 ? "pitch" : "diameter"],
        message: `Expected ${tap.name} to cut the thread of a screw, ${pitches === "" ? `none has ${mm(tap.diameter)}` : `pitch ${pitches}`}, got ${mm(tap.diameter)} with pitch ${mm(tap.pitch)}`,
      };
    }
  },
  examples: [
    passes("the same thread", "Tap and cortical screw 3.5, pitch 1.25."),
    fails("another pitch", "Tap 3.5 with pitch 1.251; screws 3.5 have 1.25.", {
      "instrument/tap-35 pitch": 1.251,
    }),
    fails("the thread of a locking screw", "Tap 3.5 with pitch 1.1, as locking 3.5 has.", {
      "instrument/tap-35 pitch": 1.1,
      "screw/locking-35 pitch": 1.1,
    }),
    fails("no such screw", "Tap 3.6; no screw is 3.6.", { "instrument/tap-35 diameter": 3.6 }),
  ],
};

import { nm } from "../../model/measure.ts";
import type { Rule } from "../../model/rule.ts";
import { meant } from "../meant.ts";
import { works } from "../work.ts";

/** A locking screw is tightened by the limiter of its own torque; other screws have none. */
export const limiterBelongsToTheScrew: Rule = {
  id: "limiter-belongs-to-the-screw",
  severity: "stop",
  about: "chain",
  summary:
    "The torque limiter releases at exactly the torque the locking screw states; a plain-head screw has no limiter.",
  why: "Limiter 1.6 N·m on a screw made for 0.9 N·m tears the drive; limiter 0.9 N·m on a screw made for 1.6 N·m leaves the head loose.",
  fix: "Correct the screw's torque or the limiter's, or put the right limiter into the system.",
  source:
    "Am J Orthop 2016;45(3):E114 (a limiter turned by power far overshoots its stated torque); the match itself is common practice",
  needsAll: ["torque-limiter"],
  *check(input) {
    for (const { file, class: kind, torque, called } of input.catalogue.screws.values()) {
      if (kind === "locking" && torque === undefined)
        yield {
          file,
          path: [],
          message: `Missing the torque of ${called}: no limiter can be named`,
        };
      if (kind !== "locking" && torque !== undefined)
        yield {
          file,
          path: ["torque"],
          message: `Expected no torque for the plain-head ${called}, got ${nm(torque)} N·m`,
        };
    }
    for (const work of works(input)) {
      const { screw } = work;
      if (!work.roles.includes("limiter") || screw.torque === undefined) continue;
      const limiter = meant(work, "limiter");
      if (limiter?.torque === screw.torque) continue;
      const got = limiter === undefined ? "none" : `${nm(limiter.torque)} N·m at the nearest`;
      yield {
        file: screw.file,
        path: ["torque"],
        message: `Expected a limiter of ${nm(screw.torque)} N·m for ${screw.called}, got ${got}`,
      };
    }
  },
  examples: [
    {
      title: "a limiter of the screw's own torque",
      passes: true,
      shows: "Locking 3.5 states 1.6 N·m; limiter 1.6 N·m releases there.",
      edits: [],
    },
    {
      title: "a limiter for another screw",
      passes: false,
      shows: "Locking 3.5 states 1.5 N·m; the limiters release at 0.9 and 1.6 N·m.",
      edits: [{ file: "screw/locking-35", path: ["torque"], value: 1.5 }],
    },
    {
      title: "a locking screw without a torque",
      passes: false,
      shows: "Locking 3.5 states no torque: no limiter can be named.",
      edits: [{ file: "screw/locking-35", path: ["torque"], value: undefined }],
    },
    {
      title: "a plain-head screw with a torque",
      passes: false,
      shows: "Cortical 3.5 states 1.6 N·m; plain-head screws are tightened by hand.",
      edits: [{ file: "screw/cortical-35", path: ["torque"], value: 1.6 }],
    },
  ],
};

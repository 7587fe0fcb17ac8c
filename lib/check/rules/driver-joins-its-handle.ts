import type { Rule } from "../../model/rule.ts";
import { meant } from "../meant.ts";
import { works } from "../work.ts";

/** The stack of driver shaft, limiter and handle closes: right drive, and couplings that meet. */
export const driverJoinsItsHandle: Rule = {
  id: "driver-joins-its-handle",
  severity: "stop",
  about: "chain",
  summary:
    "The driver has the screw's drive, and shaft, torque limiter and handle join by the same couplings.",
  why: "A driver that cannot be joined is found out with the screw already in the bone.",
  fix: "Correct the drive of the screw, or the couplings of shaft, limiter and handle.",
  source: "common practice",
  needsAll: ["driver-shaft", "handle", "torque-limiter"],
  *check(input) {
    for (const work of works(input)) {
      if (!work.roles.includes("driver")) continue;
      const { screw, roles } = work;
      const shaft = meant(work, "driver");
      if (shaft === undefined) {
        yield {
          file: screw.file,
          path: ["drive"],
          message: `Missing a driver for ${screw.drive}, the drive of ${screw.called}`,
        };
        continue;
      }
      const limiter = roles.includes("limiter") ? meant(work, "limiter") : undefined;
      const end = limiter ? limiter.coupling_out : shaft.coupling;
      if (limiter && limiter.coupling_in !== shaft.coupling) {
        yield {
          file: limiter.file,
          path: ["coupling_in"],
          message: `Expected ${shaft.coupling}, the coupling of ${shaft.name}, got ${limiter.coupling_in}`,
        };
      }
      if (!roles.includes("handle")) continue;
      const handles = [...input.catalogue.instruments.values()].filter(
        (tool) => tool.system === work.system || tool.system === "general",
      );
      if (handles.some((tool) => tool.kind === "handle" && tool.coupling === end)) continue;
      const joined = limiter ?? shaft;
      yield {
        file: joined.file,
        path: [limiter ? "coupling_out" : "coupling"],
        message: `Missing a handle with coupling ${end}, which ${joined.name} needs`,
      };
    }
  },
  examples: [
    {
      title: "shaft, limiter and handle of one coupling",
      passes: true,
      shows: "Driver 20, limiter 1.6 N·m and the small handle all join by shaft-small.",
      edits: [],
    },
    {
      title: "a screw whose drive no driver has",
      passes: false,
      shows: "A screw with drive hexalobular 30; the system has drivers 10 and 20.",
      edits: [{ file: "screw/locking-35", path: ["drive"], value: "hexalobular-30" }],
    },
    {
      title: "a shaft that does not enter the limiter",
      passes: false,
      shows: "The limiter takes shaft-large; driver 20 ends in shaft-small.",
      edits: [{ file: "instrument/limiter-16", path: ["coupling_in"], value: "shaft-large" }],
    },
    {
      title: "a limiter that no handle takes",
      passes: false,
      shows: "The limiter ends in shaft-large; the handle has shaft-small.",
      edits: [{ file: "instrument/limiter-16", path: ["coupling_out"], value: "shaft-large" }],
    },
  ],
};

import type { Defined } from "../../model/definition.ts";
import { mm, type Um } from "../../model/measure.ts";
import type { Breach, Rule } from "../../model/rule.ts";
import type { Screw } from "../../model/screw.ts";

/** Drills that public teaching pages list, by thread class and outer diameter (micrometres). */
const listed: ReadonlyMap<string, Um> = new Map([
  ["cortical 1500", 1100],
  ["cortical 2000", 1500],
  ["cortical 2700", 2000],
  ["cortical 3500", 2500],
  ["cortical 4000", 2900],
  ["cortical 4500", 3200],
  ["cancellous 4000", 2500],
  ["cancellous 6500", 3200],
]);

function* implausible({
  file,
  called,
  core,
  major,
  pilot,
  class: kind,
}: Defined<Screw>): Generator<Breach> {
  const [least, most] =
    kind === "locking" ? [core - 200, core] : [core, Math.floor((major * 85) / 100)];
  if (pilot >= least && pilot <= most) return;
  yield {
    file,
    path: ["pilot"],
    message: `Expected a pilot drill of ${mm(least)} to ${mm(most)} for ${called} (core ${mm(core)}, thread ${mm(major)}), got ${mm(pilot)}`,
  };
}

/** The pilot drill leaves the thread bone to hold in, and lets the core pass. */
export const pilotSuitsTheCore: Rule = {
  id: "pilot-suits-the-core",
  severity: "sign",
  about: "screw",
  summary:
    "A plain-head screw's pilot drill lies between its core and 85 % of its thread; a locking screw's between core less 0.2 mm and core.",
  why: "Too large a hole leaves the thread nothing to hold; too small a hole binds the screw or cracks the bone. A slip of a digit shows here.",
  fix: "Compare core, thread and pilot with the instructions for use.",
  source:
    "Heidemann et al. 1998 (critical pilot hole about 85 % of the outer diameter); listed drills: Wheeless' Textbook of Orthopaedics, online, and S. K. Shrestha, orthopaedic screw insertion, teaching page, 2021",
  *check({ catalogue }) {
    for (const screw of catalogue.screws.values()) {
      yield* implausible(screw);
      const drill = listed.get(`${screw.class} ${screw.major}`);
      if (drill === undefined || drill === screw.pilot) continue;
      const message = `A public teaching source lists drill ${mm(drill)} for this thread; this system states ${mm(screw.pilot)}: check the instructions for use`;
      yield { file: screw.file, path: ["pilot"], severity: "note", message };
    }
  },
  examples: [
    {
      title: "a drill a little over the core",
      passes: true,
      shows: "Cortical 3.5, core 2.4: drill 2.5, as public teaching pages list it.",
      edits: [],
    },
    {
      title: "a drill near the thread's width",
      passes: false,
      shows: "Cortical 3.5: drill 3.2 is over 85 % of 3.5, which is 2.975.",
      edits: [{ file: "screw/cortical-35", path: ["pilot"], value: 3.2 }],
    },
    {
      title: "a drill other than the listed one",
      passes: false,
      shows:
        "Cortical 3.5 with drill 2.7 (77 %) is plausible and is only noted: teaching pages list 2.5.",
      edits: [{ file: "screw/cortical-35", path: ["pilot"], value: 2.7 }],
    },
    {
      title: "a drill at 85 % of the thread",
      passes: true,
      shows: "Cortical 3.6: drill 3.06 is 85 %.",
      edits: [
        { file: "screw/cortical-35", path: ["major"], value: 3.6 },
        { file: "screw/cortical-35", path: ["pilot"], value: 3.06 },
      ],
    },
    {
      title: "a drill a thousandth over 85 %",
      passes: false,
      shows: "Cortical 3.6: drill 3.061 is over 85 %.",
      edits: [
        { file: "screw/cortical-35", path: ["major"], value: 3.6 },
        { file: "screw/cortical-35", path: ["pilot"], value: 3.061 },
      ],
    },
    {
      title: "a drill as wide as the core",
      passes: true,
      shows: "Cortical 3.5 with core 2.5: drill 2.5.",
      edits: [{ file: "screw/cortical-35", path: ["core"], value: 2.5 }],
    },
    {
      title: "a drill narrower than the core",
      passes: false,
      shows: "Cortical 3.5 with core 2.501: drill 2.5 binds.",
      edits: [{ file: "screw/cortical-35", path: ["core"], value: 2.501 }],
    },
    {
      title: "a locking screw drilled 0.2 mm under its core",
      passes: true,
      shows: "Locking 3.5 with core 2.9: drill 2.7.",
      edits: [{ file: "screw/locking-35", path: ["core"], value: 2.9 }],
    },
    {
      title: "a locking screw drilled further under its core",
      passes: false,
      shows: "Locking 3.5 with core 2.901: drill 2.7 is more than 0.2 mm under it.",
      edits: [{ file: "screw/locking-35", path: ["core"], value: 2.901 }],
    },
    {
      title: "a locking screw drilled at its core",
      passes: true,
      shows: "Locking 3.5 with core 2.7: drill 2.7.",
      edits: [{ file: "screw/locking-35", path: ["core"], value: 2.7 }],
    },
    {
      title: "a locking screw drilled over its core",
      passes: false,
      shows: "Locking 3.5 with core 2.699: drill 2.7 is wider than the core.",
      edits: [{ file: "screw/locking-35", path: ["core"], value: 2.699 }],
    },
  ],
};

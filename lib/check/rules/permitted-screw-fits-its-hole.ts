import type { Defined } from "../../model/definition.ts";
import { mm } from "../../model/measure.ts";
import type { Rule } from "../../model/rule.ts";
import type { Screw } from "../../model/screw.ts";
import type { Zone } from "../../model/zone.ts";

type Screwed = Extract<Zone, { permits: string[] }>;

function misfit(zone: Screwed, { major, head, called }: Defined<Screw>): string | undefined {
  if (major > zone.through)
    return `${called} (thread ${mm(major)}) does not pass ${zone.name} (${mm(zone.through)} wide)`;
  if (zone.kind === "threaded") {
    if (head.form !== "threaded")
      return `${called} has a plain head; ${zone.name} takes head thread ${zone.thread}`;
    return head.thread === zone.thread
      ? undefined
      : `${called} has head thread ${head.thread}; ${zone.name} takes ${zone.thread}`;
  }
  if (head.form !== zone.seat_form)
    return `${called} has a ${head.form} head; the seat of ${zone.name} is ${zone.seat_form}`;
  if (head.diameter > zone.seat)
    return `The head of ${called} (${mm(head.diameter)}) is wider than the seat of ${zone.name} (${mm(zone.seat)})`;
  if (head.diameter < zone.through + 800)
    return `The head of ${called} (${mm(head.diameter)}) may pull through ${zone.name} (${mm(zone.through)} wide; at least ${mm(zone.through + 800)} is needed)`;
  return undefined;
}

/** A screw that a zone permits also fits it by its numbers. */
export const permittedScrewFitsItsHole: Rule = {
  id: "permitted-screw-fits-its-hole",
  severity: "stop",
  about: "screw",
  summary:
    "Every screw a hole permits fits that hole: it passes, and its head locks or rests there.",
  why: "A permit is typed by hand. If the numbers disagree with it, the card would pair a screw with a hole it jams in or falls through.",
  fix: "Compare the hole's permits and the numbers of hole and screw with the instructions for use.",
  source:
    "common practice; screw heads and their holes in plates are matched in published bone-screw definitions",
  *check({ catalogue }) {
    for (const zone of catalogue.zones.values()) {
      if (!("permits" in zone)) continue;
      for (const [index, id] of zone.permits.entries()) {
        const screw = catalogue.screws.get(id);
        const message = screw && misfit(zone, screw);
        if (message !== undefined) yield { file: zone.file, path: ["permits", index], message };
      }
    }
  },
  examples: [
    {
      title: "a locking screw in the hole with its own head thread",
      passes: true,
      shows: "Locking 3.5 with head thread th-35 in threaded part 3.5 (th-35, 4.1 wide).",
      edits: [],
    },
    {
      title: "a head thread of another size",
      passes: false,
      shows: "Locking 3.5 with head thread th-27 in threaded part 3.5: it does not engage.",
      edits: [{ file: "screw/locking-35", path: ["head", "thread"], value: "th-27" }],
    },
    {
      title: "a thread exactly as wide as the hole",
      passes: true,
      shows: "Thread 3.5 in a hole 3.5 wide passes.",
      edits: [{ file: "zone/threaded-35", path: ["through"], value: 3.5 }],
    },
    {
      title: "a thread a thousandth wider than the hole",
      passes: false,
      shows: "Thread 3.5 in a hole 3.499 wide does not pass.",
      edits: [{ file: "zone/threaded-35", path: ["through"], value: 3.499 }],
    },
    {
      title: "a plain head 0.8 mm wider than the hole",
      passes: true,
      shows: "Head 5.0 over a slot 4.2 wide rests.",
      edits: [{ file: "screw/cortical-35", path: ["head", "diameter"], value: 5 }],
    },
    {
      title: "a plain head that may pull through",
      passes: false,
      shows: "Head 4.999 over a slot 4.2 wide: less than 0.8 mm wider than the hole.",
      edits: [{ file: "screw/cortical-35", path: ["head", "diameter"], value: 4.999 }],
    },
    {
      title: "a head exactly as wide as its seat",
      passes: true,
      shows: "Head 6.4 in a seat 6.4.",
      edits: [{ file: "screw/cortical-35", path: ["head", "diameter"], value: 6.4 }],
    },
    {
      title: "a head wider than its seat",
      passes: false,
      shows: "Head 6.401 in a seat 6.4 stands proud.",
      edits: [{ file: "screw/cortical-35", path: ["head", "diameter"], value: 6.401 }],
    },
    {
      title: "a conical head on a spherical seat",
      passes: false,
      shows: "A conical head touches a spherical seat at a line only.",
      edits: [{ file: "screw/cortical-35", path: ["head", "form"], value: "conical" }],
    },
  ],
};

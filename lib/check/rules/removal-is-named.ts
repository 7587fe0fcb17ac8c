import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";

/** For every drive there is a removal kit, or it is known that there is none. */
export const removalIsNamed: Rule = {
  id: "removal-is-named",
  severity: "note",
  about: "tray",
  summary:
    "Every drive that a screw has is served by a removal kit of its system or of the general trays.",
  why: "A drive that strips stops the case; the kit has to be fetched before it is needed.",
  fix: "Add the removal kit with its drives, and the tray it lies in; or leave this told.",
  source: 'abstract "Removal technique for cold-welded titanium locking screws"',
  needsAll: ["removal-kit"],
  *check({ catalogue }) {
    const kits = [...catalogue.instruments.values()].flatMap((one) =>
      one.kind === "removal-kit" ? [one] : [],
    );
    for (const { file, system, called, drive } of catalogue.screws.values()) {
      const served = kits.some(
        (kit) => kit.drives.includes(drive) && [system, "general"].includes(kit.system),
      );
      if (served) continue;
      const { name } = catalogue.interfaces.drives[drive] ?? { name: drive };
      yield { file, path: ["drive"], message: `Missing a removal kit for ${name} of ${called}` };
    }
  },
  examples: [
    passes("a kit for the drive", "Locking 3.5 has hexalobular 20; removal kit 20 is there."),
    fails("no kit for the drive", "Removal kit 10 only; locking 3.5 has hexalobular 20.", {
      "instrument/removal-small drives": ["hexalobular-10"],
    }),
  ],
};

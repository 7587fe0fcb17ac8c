import { plateName } from "../../model/plate-name.ts";
import type { Rule } from "../../model/rule.ts";
import { works } from "../work.ts";

/** Every part lies in some tray; what a chain needs is looked for by tray-holds-every-instrument. */
export const partLiesInATray: Rule = {
  id: "part-lies-in-a-tray",
  severity: "note",
  about: "tray",
  summary: "Every instrument, every screw and every length of every plate lies in a tray.",
  why: "A part in no tray is on no count sheet and no pull list. It may be right, so it is only told.",
  fix: "Put the part into a slot, or take it out of the library.",
  source: "common practice",
  needsAll: ["tray"],
  *check(input) {
    const { catalogue } = input;
    const needed = new Set(
      works(input).flatMap(({ screw, chain }) => [
        screw.id,
        ...(chain?.links ?? []).map(({ instrument }) => instrument),
      ]),
    );
    if (catalogue.trays.size === 0) return;
    const slots = [...catalogue.trays.values()].flatMap((tray) => tray.slots);
    const held = new Set(
      slots.map((slot) =>
        slot.holds === "instrument"
          ? slot.instrument
          : slot.holds === "rack"
            ? slot.screw
            : `${slot.plate} ${slot.holes}`,
      ),
    );
    for (const { id, file, name } of [
      ...catalogue.instruments.values(),
      ...catalogue.screws.values(),
    ]) {
      if (!held.has(id) && !needed.has(id))
        yield { file, path: ["name"], message: `Missing from every tray: ${name}` };
    }
    for (const plate of catalogue.plates.values()) {
      const drawn = "mirror_of" in plate ? catalogue.plates.get(plate.mirror_of) : plate;
      const lengths = drawn && "variants" in drawn ? drawn.variants.map(({ holes }) => holes) : [];
      const absent = lengths.filter((holes) => !held.has(`${plate.id} ${holes}`));
      if (absent.length > 0)
        yield {
          file: plate.file,
          path: ["name"],
          message: `Missing from every tray: ${plateName(plate)} with ${absent.join(", ")} holes`,
        };
    }
  },
  examples: [
    {
      title: "every part in a slot",
      passes: true,
      shows: "Countersink 3.5 lies in a slot of its own.",
      edits: [],
    },
    {
      title: "a part in no slot",
      passes: false,
      shows:
        "The slot that held the countersink holds a second sleeve: the countersink lies in no tray.",
      edits: [{ file: "tray/small", path: ["slots", 12, "instrument"], value: "sleeve-35" }],
    },
    {
      title: "a plate length in no slot",
      passes: false,
      shows: "The left plate comes with 3, 5 and 7 holes; the tray has 3 and 5.",
      edits: [
        {
          file: "plate/lower-fibula-left",
          path: ["variants", 2],
          value: { holes: 7, length: 106 },
        },
      ],
    },
  ],
};

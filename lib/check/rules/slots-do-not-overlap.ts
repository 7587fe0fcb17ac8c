import type { Rule } from "../../model/rule.ts";

/** The slots of a tray lie inside its grid, each cell and each slot name used once. */
export const slotsDoNotOverlap: Rule = {
  id: "slots-do-not-overlap",
  severity: "stop",
  about: "tray",
  summary: "Slots lie inside the tray's grid, share no cell and have names of their own.",
  why: "On the tray map two things would lie in one place, and one of them would be packed wrongly.",
  fix: "Correct the slot's place, span or name from the tray itself.",
  source: "common practice",
  *check({ catalogue }) {
    for (const { file, grid, slots } of catalogue.trays.values()) {
      const taken = new Map<string, string>();
      const names = new Set<string>();
      for (const [index, { slot, at, span }] of slots.entries()) {
        const [column, row] = at;
        if (names.has(slot))
          yield { file, path: ["slots", index, "slot"], message: `Duplicate slot ${slot}` };
        names.add(slot);
        if (column + span[0] > grid.columns || row + span[1] > grid.rows) {
          yield {
            file,
            path: ["slots", index, "at"],
            message: `Expected slot ${slot} inside ${grid.columns} × ${grid.rows} cells, got columns to ${column + span[0]}, rows to ${row + span[1]}`,
          };
        }
        const cells = Array.from(
          { length: span[0] * span[1] },
          (_, cell) => `${column + (cell % span[0])} ${row + Math.floor(cell / span[0])}`,
        );
        const clash = cells.map((cell) => taken.get(cell)).find((other) => other !== undefined);
        if (clash !== undefined)
          yield {
            file,
            path: ["slots", index, "at"],
            message: `Expected cells of its own for slot ${slot}, got some of slot ${clash}`,
          };
        for (const cell of cells) taken.set(cell, slot);
      }
    }
  },
  examples: [
    { title: "slots side by side", passes: true, shows: "Each slot has its own cells.", edits: [] },
    {
      title: "two slots in one cell",
      passes: false,
      shows: "The second slot begins in the cell where the first begins.",
      edits: [{ file: "tray/small", path: ["slots", 1, "at"], value: [0, 0] }],
    },
    {
      title: "a slot outside the grid",
      passes: false,
      shows: "A slot at column 59 of a smaller grid.",
      edits: [{ file: "tray/small", path: ["slots", 1, "at"], value: [59, 0] }],
    },
    {
      title: "a slot name used twice",
      passes: false,
      shows: "Two slots A1.",
      edits: [{ file: "tray/small", path: ["slots", 1, "slot"], value: "A1" }],
    },
  ],
};

import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";

const mishap = (order: number) => ({
  name: `Mishap ${order}`,
  order,
  acts: ["Stop."],
  source: { document: "pebblefin-ifu", section: "Table 1" },
});
const three = (...orders: readonly number[]) =>
  Object.fromEntries(orders.map((order, index) => [`mishap/m${index}`, mishap(order)]));

/** What does not go to plan is numbered from 1 without a gap. */
export const mishapsAreNumberedThrough: Rule = {
  id: "mishaps-are-numbered-through",
  severity: "stop",
  about: "technique",
  summary: "The rows of the sheet for what does not go to plan are numbered 1, 2, 3, each once.",
  why: "A gap in the numbers is the trace of a row that was lost; two with one number are told apart by chance.",
  fix: "Number them through in the order of the source; put back the row that is missing.",
  source: "common practice",
  needsAll: ["mishap"],
  *check({ catalogue }) {
    const rows = [...catalogue.mishaps.values()].sort((a, b) => a.order - b.order);
    for (const [index, { file, name, order }] of rows.entries())
      if (order !== index + 1)
        yield {
          file,
          path: ["order"],
          message: `Expected place ${index + 1} for "${name}", got ${order}`,
        };
  },
  examples: [
    passes("numbered through", "Rows 1, 2 and 3.", three(1, 2, 3)),
    fails("a gap", "Rows 1, 2 and 4.", three(1, 2, 4)),
    fails("a number twice", "Rows 1, 2 and 2.", three(1, 2, 2)),
  ],
};

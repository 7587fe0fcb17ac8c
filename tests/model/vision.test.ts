import { filterDeficiencyDeuter, filterDeficiencyProt, filterDeficiencyTrit, rgb } from "culori";
import { expect, test } from "vitest";
import { visions } from "../../lib/model/vision.ts";

const filters = {
  protan: filterDeficiencyProt(1),
  deutan: filterDeficiencyDeuter(1),
  tritan: filterDeficiencyTrit(1),
} as const;

test.each(["protan", "deutan", "tritan"] as const)(
  "The matrix of %s is that of an independent library.",
  (id) => {
    const matrix = visions.find((one) => one.id === id)?.matrix ?? [];
    for (const [column, [r, g, b]] of [
      [1, 0, 0],
      [0, 1, 0],
      [0, 0, 1],
    ].entries()) {
      const seen = rgb(filters[id]({ mode: "rgb", r: r ?? 0, g: g ?? 0, b: b ?? 0 }));
      const told = matrix.map((row) => row[column]);
      expect(told[0]).toBeCloseTo(seen.r, 5);
      expect(told[1]).toBeCloseTo(seen.g, 5);
      expect(told[2]).toBeCloseTo(seen.b, 5);
    }
  },
);

test("Grey keeps white white and black black.", () => {
  const grey = visions.find(({ id }) => id === "grey")?.matrix ?? [];
  for (const row of grey) expect(row[0] + row[1] + row[2]).toBeCloseTo(1, 6);
});

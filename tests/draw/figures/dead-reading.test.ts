import { describe, expect, test } from "vitest";
import { deadReading } from "../../../lib/draw/figures/dead-reading.ts";
import { Zone } from "../../../lib/model/zone.ts";
import { pointsOf, readSvg } from "../read-svg.ts";
import { sampleInterfaces } from "../sample-interfaces.ts";
import { sampleScrews } from "../sample-screws.ts";

const zone = {
  ...Zone.parse({
    kind: "threaded",
    name: "threaded part 3.5",
    through: 4,
    thread: "th-35",
    permits: [],
    source: { document: "sample", section: "drawing" },
  }),
  id: "zone",
  system: "general",
  file: "zone.yaml",
};

function drawn(reading: number, add: number, [shorter, longer]: readonly [number, number]) {
  const screw = sampleScrews.find((one) => one.class === "locking");
  if (screw === undefined) throw new Error("No locking screw");
  const parts = { screw, zone, plateName: "sample plate", plateThickness: 3300 };
  const gap = { reading, add, shorter, longer };
  return deadReading("d", gap, parts, sampleInterfaces, { width: 92, height: 42 });
}

describe("a dead reading", () => {
  test("says in words what the policy adds, when it adds anything, and how far each screw is off", () => {
    expect(drawn(52_000, 0, [50_000, 55_000]).facts).toEqual([
      ["reading", "52 mm"],
      ["next shorter", "50 mm: 2 mm short"],
      ["next longer", "55 mm: 3 mm long"],
    ]);
    expect(drawn(50_000, 2000, [50_000, 55_000]).facts).toEqual([
      ["reading", "50 mm"],
      ["with what the policy adds", "52 mm"],
      ["next shorter", "50 mm: 2 mm short"],
      ["next longer", "55 mm: 3 mm long"],
    ]);
  });

  test.each([
    [52_000, 0, [50_000, 55_000], 2, 3],
    [53_000, 0, [50_000, 55_000], 3, 2],
    [50_000, 2000, [50_000, 55_000], 2, 3],
  ] as const)(
    "of %i µm with %i µm added, between %j, shows how much is missing and how much is over, within 0.1 mm",
    (reading, add, lengths, short, long) => {
      const elements = readSvg(drawn(reading, add, lengths).svg);
      const scale = Number(
        elements.find(({ attributes }) => attributes.class === "dead-reading")?.attributes[
          "data-scale"
        ],
      );
      for (const [name, size] of [
        ["short", short],
        ["long", long],
      ] as const) {
        const line = elements.find(({ attributes }) => attributes["data-dimension"] === name);
        const [from, to] = line === undefined ? [] : pointsOf(line);
        expect(Math.abs((to?.[0] ?? 0) - (from?.[0] ?? 0)) / scale).toBeCloseTo(size, 1);
        expect(line?.attributes["data-size"]).toBe(String(size));
      }
    },
  );

  test("says which screws the reading lies between, that bone is not anatomy, and leaves the choice to the surgeon", () => {
    const { svg, description } = drawn(52_000, 0, [50_000, 55_000]);
    for (const words of ["reading 52", "screw 50", "screw 55", "2 short", "3 long", "not anatomy"])
      expect(svg).toContain(`>${words}<`);
    expect(description).toContain("The surgeon decides.");
  });
});

import { describe, expect, test } from "vitest";
import { FormatChoice, formats } from "../../lib/model/format.ts";

describe("formats", () => {
  test.each([
    ["a2-landscape", 594, 420],
    ["a6-portrait", 105, 148],
    ["half-letter-landscape", 215.9, 139.7],
    ["id-1", 85.6, 53.98],
  ] as const)("%s measures %f × %f mm", (id, width, height) => {
    expect([formats[id].width, formats[id].height]).toEqual([width, height]);
  });

  test("lie or stand as they are called", () => {
    for (const { id, width, height } of Object.values(formats))
      expect(width > height).toBe(!id.endsWith("portrait"));
  });

  test("keep a clear edge of 8 mm on what hangs laminated", () => {
    for (const { id, margin } of Object.values(formats))
      if (/^(a[345]|letter|half)/.test(id)) expect(margin).toBe(8);
  });

  test("may be chosen only where they make sense for the kind of sheet", () => {
    expect(FormatChoice.safeParse({ pairing: ["a3-landscape"] }).success).toBe(true);
    expect(FormatChoice.safeParse({ pairing: ["id-1"] }).success).toBe(false);
    expect(FormatChoice.safeParse({ banner: [] }).success).toBe(false);
  });
});

import { describe, expect, test } from "vitest";
import { Gtin, gtinCheckDigit } from "../../lib/model/gtin.ts";

/** Worked examples of check digits: GS1 Hong Kong, gs1hk.org, "Check Digit Calculator" (first row) and GS1 Sweden, gs1.se,
 * "Så beräknas kontrollsiffran" (second); the third is the first with an indicator before it, the last in a prefix of the GS1
 * documentation (from memory), both worked out with two libraries. */
const worked = [
  ["629104150021", 3],
  ["730001100001", 7],
  ["1629104150021", 0],
  ["0950110153000", 3],
] as const;

describe("a GTIN", () => {
  test.each(worked)("of %s ends in %i", (data, digit) => {
    expect(gtinCheckDigit(data)).toBe(digit);
    expect(Gtin.safeParse(`${data}${digit}`).success).toBe(true);
  });

  test.each(worked)("of %s with any one digit changed is refused", (data, digit) => {
    for (const [at, own] of [...data].entries())
      for (const other of "0123456789".replace(own, ""))
        expect(
          Gtin.safeParse(`${data.slice(0, at)}${other}${data.slice(at + 1)}${digit}`).success,
        ).toBe(false);
  });

  test("with two neighbours exchanged is refused, unless they differ by five: a known limit", () => {
    expect(Gtin.safeParse("6921041500213").success).toBe(false);
    expect(Gtin.safeParse("6291041050213").success).toBe(true);
  });

  test.each(["6291041500214", "629104150021", "62910415002133", "629104150021X", ""])(
    "is not %s",
    (digits) => {
      expect(Gtin.safeParse(digits).success).toBe(false);
    },
  );
});

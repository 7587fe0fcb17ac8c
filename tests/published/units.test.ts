import { describe, expect, test } from "vitest";
import type { z } from "zod";
import { degrees, kilograms, millimetres, newtonMetres } from "../../lib/model/measure.ts";
import { asNumber } from "../../lib/validate/number-words.ts";

const written = (field: { readonly in: z.core.$ZodType }, text: string): string =>
  asNumber(text, field.in);
const length = millimetres(0.1, 1000, "Length");
const torque = newtonMetres(0.1, 10, "Torque");
const angle = degrees(0, 90, "Angle");
const mass = kilograms(0.1, 40, "Mass");

/** Conversions: the inch is 25.4 mm and the pound 0.45359237 kg by definition (international yard and pound, 1959; from memory);
 * 13.27611868699078 lbf·in are 1.5 N·m as mathjs 15.2.0 converts (js-quantities 1.8.0 agrees to 9 parts in 10^8). */
describe("a number that is written with its unit", () => {
  test.each([
    [length, "1 in", "25.4"],
    [length, '0.5"', "12.7"],
    [length, "3.5 cm", "35"],
    [length, "0,138 inch", "3.505"],
    [torque, "13.27611868699078 lbf·in", "1.5"],
    [torque, "160 Ncm", "1.6"],
    [angle, "15 deg", "15"],
    [mass, "25 lb", "11.34"],
    [mass, "8900 g", "8.9"],
  ] as const)("%# %s", (field, text, expected) => {
    expect(written(field, text)).toMatch(new RegExp(`^Write ${expected.replace(".", "\\.")},`));
  });

  /** Both mathjs 15.2.0 and js-quantities 1.8.0 refuse to turn N·m into mm. */
  test.each([
    [length, "1 N·m"],
    [torque, "1 mm"],
    [torque, "1.5 in"],
    [angle, "1 mm"],
    [mass, "1 in"],
  ] as const)("%# %s is not turned into another kind of measure", (field, text) => {
    expect(written(field, text)).toBe("");
  });
});

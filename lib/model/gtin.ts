import { z } from "zod";

/** The check digit of a Global Trade Item Number from the digits before it: weights 3, 1, 3, … from the right, up to the next ten (GS1 General Specifications, 7.9).
 * Two neighbours that differ by five may be exchanged without its changing. */
export function gtinCheckDigit(data: string): number {
  const sum = [...data]
    .reverse()
    .reduce((total, digit, index) => total + Number(digit) * (index % 2 === 0 ? 3 : 1), 0);
  return (10 - (sum % 10)) % 10;
}

const digits = /^(\d{8}|\d{12,14})$/;

/** A Global Trade Item Number of 8, 12, 13 or 14 digits, in quotes so that a zero at its head is kept. */
export const Gtin = z
  .string()
  .regex(digits)
  .superRefine((number, context) => {
    const check = gtinCheckDigit(number.slice(0, -1));
    if (digits.test(number) && check !== Number(number.at(-1)))
      context.addIssue({
        code: "custom",
        message: `Expected ${check} as last digit`,
        params: { rule: "checkDigit" },
      });
  })
  .describe("GTIN of the single instrument, in quotes");

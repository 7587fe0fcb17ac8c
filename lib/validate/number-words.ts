import { z } from "zod";

/** What a field takes, in words: "a plain number in mm between 1 and 8". */
export function expectedNumber(schema: z.core.$ZodType | undefined): string {
  if (!(schema instanceof z.ZodNumber)) return "a plain number";
  const unit = z.globalRegistry.get(schema)?.unit;
  const { minValue, maxValue } = schema;
  const whole = schema.isInt ? "a whole number" : "a plain number";
  const range =
    minValue !== null && maxValue !== null && Math.abs(minValue) < 1e9 && Math.abs(maxValue) < 1e9
      ? ` between ${minValue} and ${maxValue}`
      : "";
  return `${whole}${typeof unit === "string" ? ` in ${unit}` : ""}${range}`;
}

/** In thousandths: no field takes a finer number. */
const rounded = (value: number): string => String(Math.round(value * 1e3) / 1e3);
const factors = [
  {
    by: 10,
    says: (value: string) =>
      `${value} would be in range: were these centimetres, or did the decimal point slip?`,
  },
  { by: 0.1, says: (value: string) => `${value} would be in range: did the decimal point slip?` },
  { by: 25.4, says: (value: string) => `${value} would be in range: were these inches?` },
  {
    by: 1 / 25.4,
    says: (value: string) => `${value} would be in range: was it converted from inches twice?`,
  },
] as const;

/** What an out-of-range number may have been: ten times off, or inches. Empty when nothing fits. */
export function slips(value: number, schema: z.core.$ZodType | undefined): string {
  if (!(schema instanceof z.ZodNumber) || schema.isInt) return "";
  const { minValue, maxValue } = schema;
  const unit = z.globalRegistry.get(schema)?.unit;
  const fits = factors.filter(
    ({ by }) =>
      value * by >= (minValue ?? -Infinity) &&
      value * by <= (maxValue ?? Infinity) &&
      (unit === "mm" || by === 10 || by === 0.1),
  );
  return fits.map(({ by, says }) => says(rounded(value * by))).join(" ");
}

/** What units are in that of a field, by what the field measures; a unit of anything else is no slip of the pen. */
const units: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  mm: { mm: 1, cm: 10, m: 1000, in: 25.4, inch: 25.4, '"': 25.4 },
  N·m: {
    nm: 1,
    n·m: 1,
    "n*m": 1,
    ncm: 0.01,
    n·cm: 0.01,
    lbf·in: 0.1129848290276167,
    in·lbf: 0.1129848290276167,
  },
  "°": { "°": 1, deg: 1 },
  kg: { kg: 1, g: 0.001, lb: 0.45359237 },
};

/** How to write a number that came as text: "3.5 cm" -> "Write 35: …". Empty when the text holds no single number, or one with a unit of something else. */
export function asNumber(text: string, schema: z.core.$ZodType | undefined): string {
  const [, digits, suffix = ""] = /^\s*(-?\d+(?:[.,]\d+)?)\s*([^\d\s]*)\s*$/u.exec(text) ?? [];
  const unit = schema instanceof z.ZodNumber ? z.globalRegistry.get(schema)?.unit : undefined;
  const known = typeof unit === "string" ? units[unit] : undefined;
  const factor = suffix === "" ? 1 : known?.[suffix.toLowerCase()];
  if (digits === undefined || factor === undefined) return "";
  return `Write ${rounded(Number(digits.replace(",", ".")) * factor)}, without quotes or unit${known ? `: the unit is always ${unit}` : ""}.`;
}

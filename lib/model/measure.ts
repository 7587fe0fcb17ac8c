import { z } from "zod";

/** A length in integer micrometres; written in YAML as plain millimetres. */
export type Um = number;
/** A torque in integer millinewton metres; written in YAML as plain newton metres. */
export type Mnm = number;
/** An angle in integer hundredths of a degree; written in YAML as plain degrees. */
export type Cdeg = number;

/** A number no finer than what it is read into, so that nothing is rounded in silence. */
const scaled = (unit: string, factor: number, min: number, max: number, what: string) =>
  z
    .number()
    .min(min)
    .max(max)
    .multipleOf(1 / factor)
    .meta({ description: `${what}, ${unit}, ${min} to ${max}`, unit })
    .transform((value) => Math.round(value * factor));

/** A length in mm between `min` and `max` (mm), read into integer micrometres. */
export const millimetres = (min: number, max: number, what: string) =>
  scaled("mm", 1000, min, max, what);

/** A torque in N·m between `min` and `max`, read into integer millinewton metres. */
export const newtonMetres = (min: number, max: number, what: string) =>
  scaled("N·m", 1000, min, max, what);

/** An angle in degrees between `min` and `max`, read into integer hundredths of a degree. */
export const degrees = (min: number, max: number, what: string) => scaled("°", 100, min, max, what);

/** A mass in kilograms between `min` and `max`, read into integer grams. */
export const kilograms = (min: number, max: number, what: string) =>
  scaled("kg", 1000, min, max, what);

/** A whole number of things between `min` and `max`. */
export const count = (min: number, max: number, what: string) =>
  z
    .number()
    .int()
    .min(min)
    .max(max)
    .meta({ description: `${what}, count, ${min} to ${max}` });

/** Micrometres as etched on metal: millimetres with at least one decimal place ("2.0", "1.25"). */
export function mm(length: Um): string {
  const text = (length / 1000).toFixed(3).replace(/0+$/, "");
  return text.endsWith(".") ? `${text}0` : text;
}

/** Micrometres as a whole-length word: millimetres without a needless decimal ("16", "12.5"). */
export function wholeMm(length: Um): string {
  return String(length / 1000);
}

/** Millinewton metres as newton metres with one decimal place at least ("1.6"). */
export function nm(torque: Mnm): string {
  return mm(torque);
}

import type { Um } from "../model/measure.ts";

/** Whole numbers that are misheard for one another when called out, by language; from memory. */
const misheard: Readonly<Record<string, readonly (readonly [number, number])[]>> = {
  en: [13, 14, 15, 16, 17, 18, 19].map((teen) => [teen, (teen - 10) * 10] as const),
  de: [24, 25, 26, 28, 35, 36, 38, 45, 46, 48, 56, 58, 68].map(
    (number) => [number, (number % 10) * 10 + Math.floor(number / 10)] as const,
  ),
  fr: [
    [13, 16],
    [60, 70],
    [80, 90],
  ],
  es: [
    [2, 12],
    [60, 70],
  ],
};

/** Pairs among the lengths and readings given (micrometres) that sound alike in a language when they are called: fourteen and forty. */
export function soundAlikes(
  language: string,
  lengths: readonly Um[],
): readonly (readonly [Um, Um])[] {
  const there = new Set(lengths);
  return (misheard[language] ?? [])
    .map(([a, b]) => [a * 1000, b * 1000] as const)
    .filter(([a, b]) => there.has(a) && there.has(b));
}

import type { Catalogue } from "../model/catalogue.ts";

/** The newest card date of a library, ISO 8601: the day that is printed and judged by when none is given. */
export function newestCardDay({ systems }: Catalogue): string {
  const days = [...systems.values()].map(({ cards }) => cards.date).sort();
  return days.at(-1) ?? "1970-01-01";
}

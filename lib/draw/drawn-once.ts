import type { Figure, Pictures } from "../model/figure.ts";

type Draw = (id: string, ...args: readonly unknown[]) => Figure;

/** Stands in a kept figure where its id will be: a character that no text of a library holds. */
const mark = "\uE000";

/** A figure but for its id: its SVG falls into the pieces between which the id stands. */
type Kept = { readonly figure: Figure; readonly pieces: readonly string[] };

/** The same pictures, each drawn once for the same numbers: a figure's words and lines follow from what it is given, its id only names it. What is
 * given is told apart by its JSON, which is made once for each object. */
export function drawnOnce(pictures: Pictures): Pictures {
  const written = new WeakMap<object, string>();
  const kept = new Map<string, Kept>();
  const textOf = (value: unknown): string => {
    if (typeof value !== "object" || value === null) return JSON.stringify(value) ?? "";
    const text = written.get(value) ?? JSON.stringify(value);
    written.set(value, text);
    return text;
  };
  const once =
    (kind: string, draw: Draw): Draw =>
    (id, ...args) => {
      const key = `${kind} ${args.map(textOf).join(" ")}`;
      let known = kept.get(key);
      if (known === undefined) {
        const figure = draw(mark, ...args);
        known = { figure, pieces: figure.svg.split(mark) };
        kept.set(key, known);
      }
      return { ...known.figure, id, svg: known.pieces.join(id) };
    };
  const all = Object.entries(pictures).map(([kind, draw]) => [
    kind,
    kind === "textWidth" ? draw : once(kind, draw as unknown as Draw),
  ]);
  return Object.fromEntries(all) as Pictures;
}

import { createHash } from "node:crypto";
import type { Figure, Pictures } from "../model/figure.ts";

type Draw = (id: string, ...args: readonly unknown[]) => Figure;

/** Stands in a kept figure where its id will be: a character that no text of a library holds. */
const mark = "\uE000";

/** A figure but for its id: its SVG falls into the pieces between which the id stands. */
export type KeptFigure = {
  readonly facts: Omit<Figure, "id" | "svg">;
  readonly pieces: readonly string[];
};

/** Where figures are kept under the kind of drawing and what it is given. */
export type FigureStore = {
  get(key: string): KeptFigure | undefined;
  set(key: string, kept: KeptFigure): unknown;
};

/** The same pictures, each drawn once for the same numbers: a figure's words and lines follow from what it is given, its id only names it. What is
 * given is told apart by the SHA-256 of its JSON, which is made once for each object. */
export function drawnOnce(pictures: Pictures, store: FigureStore = new Map()): Pictures {
  const known = new WeakMap<object, string>();
  const nameOf = (value: unknown): string => {
    if (typeof value !== "object" || value === null) return JSON.stringify(value) ?? "";
    const name =
      known.get(value) ?? createHash("sha256").update(JSON.stringify(value)).digest("base64");
    known.set(value, name);
    return name;
  };
  const once =
    (kind: string, draw: Draw): Draw =>
    (id, ...args) => {
      const key = `${kind} ${args.map(nameOf).join(" ")}`;
      let kept = store.get(key);
      if (kept === undefined) {
        const { id: _, svg, ...facts } = draw(mark, ...args);
        kept = { facts, pieces: svg.split(mark) };
        store.set(key, kept);
      }
      return { ...kept.facts, id, svg: kept.pieces.join(id) };
    };
  const all = Object.entries(pictures).map(([kind, draw]) => [
    kind,
    kind === "textWidth" ? draw : once(kind, draw as unknown as Draw),
  ]);
  return Object.fromEntries(all) as Pictures;
}

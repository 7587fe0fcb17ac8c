/** An element of a drawing with its attributes, as text. */
export type Drawn = {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
};

/** Every element of an SVG in document order. */
export function readSvg(svg: string): readonly Drawn[] {
  return [...svg.matchAll(/<([a-zA-Z]+)((?:\s[^<>]*)?)>/g)].map(([, name = "", rest = ""]) => ({
    name,
    attributes: Object.fromEntries(
      [...rest.matchAll(/([\w-]+)="([^"]*)"/g)].map(([, key, value]) => [key, value]),
    ),
  }));
}

/** The elements that carry `data-edge="…"`. */
export const edgesOf = (svg: string, edge: string): readonly Drawn[] =>
  readSvg(svg).filter(({ attributes }) => attributes["data-edge"] === edge);

/** The points of a polyline, polygon or straight line, mm. */
export function pointsOf({ attributes }: Drawn): readonly (readonly [number, number])[] {
  const { points, x1, y1, x2, y2 } = attributes;
  if (points !== undefined)
    return points.split(" ").map((pair) => pair.split(",").map(Number) as [number, number]);
  return [
    [Number(x1), Number(y1)],
    [Number(x2), Number(y2)],
  ];
}

/** How far an element reaches along an axis, mm. */
export function extent(drawn: Drawn, axis: 0 | 1): number {
  const values = pointsOf(drawn).map((point) => point[axis]);
  return Math.max(...values) - Math.min(...values);
}

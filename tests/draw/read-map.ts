/** What a plate map's SVG says, read back with plain text patterns: independent of the code that placed it. Millimetres. */
export type ReadMap = {
  readonly scale: number;
  readonly width: number;
  readonly height: number;
  readonly holes: readonly {
    readonly label: string;
    readonly x: number;
    readonly y: number;
    readonly dataX: number;
    readonly dataY: number;
  }[];
  readonly labels: readonly {
    readonly label: string;
    readonly x: number;
    readonly y: number;
    readonly size: number;
    readonly words: string;
  }[];
  readonly leaders: readonly {
    readonly label: string;
    readonly line: readonly [number, number, number, number];
  }[];
  /** Every other text; `x` is where its anchor stands. */
  readonly words: readonly {
    readonly what: string;
    readonly words: string;
    readonly x: number;
    readonly y: number;
    readonly size: number;
    readonly weight: number;
    readonly anchor: string;
  }[];
  /** The lines along regions. */
  readonly spans: readonly { readonly region: string; readonly line: Line }[];
  /** Corners of the thick edges of bend zones, and of the plate's body from the side. */
  readonly bends: readonly { readonly name: string; readonly points: readonly Spot[] }[];
  readonly side?: { readonly points: readonly Spot[] };
};

type Spot = readonly [number, number];
type Line = readonly [number, number, number, number];

const attribute = (tag: string, name: string): string =>
  new RegExp(`[\\s"]${name}="([^"]*)"`).exec(tag)?.[1] ?? "";
const numbers = (text: string): number[] => (text.match(/-?[\d.]+/g) ?? []).map(Number);

const lineOf = (tag: string): Line =>
  ["x1", "y1", "x2", "y2"].map((name) => Number(attribute(tag, name))) as [
    number,
    number,
    number,
    number,
  ];
const pointsOf = (tag: string): Spot[] =>
  attribute(tag, "points")
    .split(" ")
    .map((pair) => pair.split(",").map(Number) as [number, number]);

/** Reads a plate map. */
export function readMap(svg: string): ReadMap {
  const [, , width = 0, height = 0] = numbers(attribute(svg, "viewBox"));
  const texts = [...svg.matchAll(/<text[^>]*>[^<]*<\/text>/g)].map(([tag]) => tag);
  const body = /<polygon[^>]*data-edge="side"[^>]*>/.exec(svg);
  const inner = (tag: string): string => />([^<]*)</.exec(tag)?.[1] ?? "";
  return {
    scale: Number(attribute(svg, "data-scale")),
    width,
    height,
    holes: [...svg.matchAll(/<g[^>]*data-hole[^>]*>/g)].map(([tag]) => {
      const [x = Number.NaN, y = Number.NaN] = numbers(attribute(tag, "transform"));
      return {
        label: attribute(tag, "data-hole"),
        x,
        y,
        dataX: Number(attribute(tag, "data-x")),
        dataY: Number(attribute(tag, "data-y")),
      };
    }),
    labels: texts
      .filter((tag) => tag.includes("data-label"))
      .map((tag) => ({
        label: attribute(tag, "data-label"),
        x: Number(attribute(tag, "x")),
        y: Number(attribute(tag, "y")),
        size: Number(attribute(tag, "font-size")),
        words: inner(tag),
      })),
    leaders: [...svg.matchAll(/<line[^>]*data-leader[^>]*>/g)].map(([tag]) => ({
      label: attribute(tag, "data-leader"),
      line: lineOf(tag),
    })),
    words: texts
      .filter((tag) => tag.includes("data-word"))
      .map((tag) => ({
        what: attribute(tag, "data-word"),
        words: inner(tag),
        x: Number(attribute(tag, "x")),
        y: Number(attribute(tag, "y")),
        size: Number(attribute(tag, "font-size")),
        weight: Number(attribute(tag, "font-weight")),
        anchor: attribute(tag, "text-anchor"),
      })),
    spans: [...svg.matchAll(/<line[^>]*data-span[^>]*>/g)].map(([tag]) => ({
      region: attribute(tag, "data-span"),
      line: lineOf(tag),
    })),
    bends: [...svg.matchAll(/<polygon[^>]*data-bend[^>]*>/g)].map(([tag]) => ({
      name: attribute(tag, "data-bend"),
      points: pointsOf(tag),
    })),
    ...(body === null ? {} : { side: { points: pointsOf(body[0]) } }),
  };
}

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
  readonly words: readonly { readonly what: string; readonly words: string }[];
};

const attribute = (tag: string, name: string): string =>
  new RegExp(`[\\s"]${name}="([^"]*)"`).exec(tag)?.[1] ?? "";
const numbers = (text: string): number[] => (text.match(/-?[\d.]+/g) ?? []).map(Number);

/** Reads a plate map. */
export function readMap(svg: string): ReadMap {
  const [, , width = 0, height = 0] = numbers(attribute(svg, "viewBox"));
  const texts = [...svg.matchAll(/<text[^>]*>[^<]*<\/text>/g)].map(([tag]) => tag);
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
      line: ["x1", "y1", "x2", "y2"].map((name) => Number(attribute(tag, name))) as [
        number,
        number,
        number,
        number,
      ],
    })),
    words: texts
      .filter((tag) => tag.includes("data-word"))
      .map((tag) => ({ what: attribute(tag, "data-word"), words: inner(tag) })),
  };
}

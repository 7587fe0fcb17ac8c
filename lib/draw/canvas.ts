import { registerWindow, SVG } from "@svgdotjs/svg.js";
import { createSVGWindow } from "svgdom";
import type { Figure } from "../model/figure.ts";
import {
  type Dash,
  dashes,
  family,
  type Paint,
  paints,
  type Stroke,
  strokes,
  type TypeSize,
  typeSizes,
  type Weight,
} from "./tokens.ts";

/** A place on the figure in millimetres, x to the right and y down. */
export type Spot = readonly [x: number, y: number];
/** One piece of a path, in millimetres. */
export type PathPiece =
  | readonly ["M" | "L", number, number]
  | readonly ["C", number, number, number, number, number, number]
  | readonly ["A", radius: number, large: 0 | 1, clockwise: 0 | 1, x: number, y: number]
  | readonly ["Z"];
/** How a shape is painted; without a fill it is empty, without a stroke it has a `line` outline in ink. */
export type Look = {
  readonly fill?: Paint;
  readonly stroke?: Stroke | "none";
  readonly colour?: Paint;
  readonly dash?: Dash;
  readonly data?: Readonly<Record<string, string | number>>;
};
/** How words are set; `size` may be a role or millimetres of font size. */
export type Lettering = {
  readonly size?: TypeSize | number;
  readonly weight?: Weight;
  readonly anchor?: "start" | "middle" | "end";
  readonly colour?: Paint;
  readonly data?: Readonly<Record<string, string | number>>;
};
/** Where a group stands: moved to `at`, turned by `turn` degrees clockwise, its shapes scaled (a negative factor mirrors). Line widths and words keep their size. */
export type Placing = {
  readonly at?: Spot;
  readonly turn?: number;
  readonly scale?: number | Spot;
  readonly title?: string;
  readonly data?: Readonly<Record<string, string | number>>;
};

/** Draws into one group of a figure; every number is in mm, rounded to 0.001 and refused when not finite. */
export type Pen = {
  readonly figure: string;
  /** Draws into a new group with the class `name`. */
  group(name: string, placing: Placing, draw: (pen: Pen) => void): void;
  line(from: Spot, to: Spot, look?: Look): void;
  polyline(points: readonly Spot[], look?: Look): void;
  polygon(points: readonly Spot[], look?: Look): void;
  circle(centre: Spot, radius: number, look?: Look): void;
  box(corner: Spot, width: number, height: number, look?: Look, corners?: number): void;
  path(pieces: readonly PathPiece[], look?: Look): void;
  /** Words on one line; `at` is on the baseline. */
  words(at: Spot, text: string, lettering?: Lettering): void;
  /** Round dots in ink, `size` wide at any scale, as one path: a repeated SVG pattern would become a picture on paper. */
  dots(centres: readonly Spot[], size: number, data?: Look["data"]): void;
};

/** A line so short, with round ends, is a dot. */
const dotLength = 0.01;
const window = createSVGWindow() as unknown as Window;

/** A number as it is drawn: rounded to 0.001; throws when it is not finite. */
function rounded(value: number): number {
  if (!Number.isFinite(value)) throw new Error(`A drawing holds the number ${value}`);
  return Math.round(value * 1000) / 1000 || 0;
}

function pathText(pieces: readonly PathPiece[], [sx, sy]: Spot): string {
  return pieces
    .map((piece) => {
      if (piece[0] === "Z") return "Z";
      if (piece[0] === "A") {
        const [, radius, large, clockwise, x, y] = piece;
        const sweep = sx * sy < 0 ? 1 - clockwise : clockwise;
        const r = rounded(radius * Math.abs(sx));
        return `A${r} ${r} 0 ${large} ${sweep} ${rounded(x * sx)} ${rounded(y * sy)}`;
      }
      const [letter, ...numbers] = piece;
      return (
        letter +
        numbers.map((value, index) => rounded(value * (index % 2 === 0 ? sx : sy))).join(" ")
      );
    })
    .join("");
}

type Attributes = Record<string, string | number>;

/** Puts an element into another. Straight through the DOM: going through svg.js costs four times as much. */
function put(parent: Element, name: string, attributes: Attributes): Element {
  const element = parent.ownerDocument.createElementNS(parent.namespaceURI, name);
  for (const key in attributes) element.setAttribute(key, String(attributes[key]));
  return parent.appendChild(element);
}

/** Adds how a shape is painted to its own attributes. */
function painted(attributes: Attributes, look: Look = {}): Attributes {
  const { fill = "none", stroke = "line", colour = "ink", dash, data } = look;
  attributes["fill"] = paints[fill];
  if (stroke !== "none") {
    attributes["stroke"] = paints[colour];
    attributes["stroke-width"] = strokes[stroke];
    if (dash !== undefined) {
      attributes["stroke-linecap"] = "butt";
      attributes["stroke-dasharray"] = dashes[dash].join(" ");
    }
  }
  return labelled(attributes, data);
}

function labelled(
  attributes: Attributes,
  data: Readonly<Record<string, string | number>> = {},
): Attributes {
  for (const key in data) {
    const value = data[key] ?? "";
    attributes[`data-${key}`] = typeof value === "number" ? rounded(value) : value;
  }
  return attributes;
}

function penFor(figure: string, target: Element, scale: Spot): Pen {
  const [sx, sy] = scale;
  const x = (value: number): number => rounded(value * sx);
  const y = (value: number): number => rounded(value * sy);
  const length = (value: number): number => rounded(value * Math.abs(sx));
  const list = (points: readonly Spot[]): string =>
    points.map((spot) => `${x(spot[0])},${y(spot[1])}`).join(" ");
  const shape = (name: string, attributes: Attributes, look?: Look): void => {
    put(target, name, painted(attributes, look));
  };
  return {
    figure,
    group(name, { at, turn, scale: by = 1, title, data }, draw) {
      const attributes: Attributes = { class: name };
      const moves = [
        ...(at === undefined ? [] : [`translate(${x(at[0])} ${y(at[1])})`]),
        ...(turn === undefined ? [] : [`rotate(${rounded(turn)})`]),
      ];
      if (moves.length > 0) attributes["transform"] = moves.join(" ");
      const group = put(target, "g", labelled(attributes, data));
      if (title !== undefined) put(group, "title", {}).textContent = title;
      const [bx, by2] = typeof by === "number" ? [by, by] : by;
      draw(penFor(figure, group, [sx * bx, sy * by2]));
    },
    line: (from, to, look) =>
      shape("line", { x1: x(from[0]), y1: y(from[1]), x2: x(to[0]), y2: y(to[1]) }, look),
    polyline: (points, look) => shape("polyline", { points: list(points) }, look),
    polygon: (points, look) => shape("polygon", { points: list(points) }, look),
    circle: (centre, radius, look) =>
      shape("circle", { cx: x(centre[0]), cy: y(centre[1]), r: length(radius) }, look),
    box(corner, width, height, look, corners = 0) {
      const box: Attributes = {
        x: rounded(Math.min(corner[0] * sx, (corner[0] + width) * sx)),
        y: rounded(Math.min(corner[1] * sy, (corner[1] + height) * sy)),
        width: length(width),
        height: rounded(height * Math.abs(sy)),
      };
      if (corners > 0) box["rx"] = length(corners);
      shape("rect", box, look);
    },
    path: (pieces, look) => shape("path", { d: pathText(pieces, scale) }, look),
    words(at, text, { size = "body", weight = 400, anchor = "start", colour = "ink", data } = {}) {
      const words: Attributes = {
        x: x(at[0]),
        y: y(at[1]),
        fill: paints[colour],
        "font-size": rounded(typeof size === "number" ? size : typeSizes[size]),
        "font-weight": weight,
      };
      if (anchor !== "start") words["text-anchor"] = anchor;
      put(target, "text", labelled(words, data)).textContent = text;
    },
    dots(centres, size, data) {
      const d = centres.map((spot) => `M${x(spot[0])} ${y(spot[1])}h${dotLength}`).join("");
      const dot = { d, fill: paints.none, stroke: paints.ink, "stroke-width": rounded(size) };
      put(target, "path", labelled(dot, data));
    },
  };
}

/** Draws one figure on a fresh root sized in mm, with its title, description and ids that start with `id`. Synchronous: svg.js keeps one window. */
export function drawFigure(
  id: string,
  about: {
    readonly title: string;
    readonly description: string;
    readonly width: number;
    readonly height: number;
  },
  draw: (pen: Pen) => void,
): Figure {
  registerWindow(window, window.document);
  const width = rounded(about.width);
  const height = rounded(about.height);
  const root = SVG().size(`${width}mm`, `${height}mm`).viewbox(0, 0, width, height);
  root.attr({ id, role: "img", "aria-labelledby": `${id}-title ${id}-desc` });
  root.attr({ "font-family": family, "stroke-linejoin": "round", "stroke-linecap": "round" });
  const { node } = root;
  put(node, "title", { id: `${id}-title` }).textContent = about.title;
  put(node, "desc", { id: `${id}-desc` }).textContent = about.description;
  draw(penFor(id, node, [1, 1]));
  const { title, description } = about;
  return { id, svg: node.outerHTML, title, description, width, height };
}

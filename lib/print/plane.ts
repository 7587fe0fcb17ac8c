/** An affine map as a PDF writes it: x′ = ax + cy + e, y′ = bx + dy + f. */
export type Matrix = readonly [a: number, b: number, c: number, d: number, e: number, f: number];
export type Point = readonly [x: number, y: number];
export type Box = readonly [left: number, bottom: number, right: number, top: number];

export const unmoved: Matrix = [1, 0, 0, 1, 0, 0];

/** The map that does `inner` first and `outer` then. */
export function chained(outer: Matrix, [a, b, c, d, e, f]: Matrix): Matrix {
  const [A, B, C, D, E, F] = outer;
  return [
    A * a + C * b,
    B * a + D * b,
    A * c + C * d,
    B * c + D * d,
    A * e + C * f + E,
    B * e + D * f + F,
  ];
}

export function moved([a, b, c, d, e, f]: Matrix, [x, y]: Point): Point {
  return [a * x + c * y + e, b * x + d * y + f];
}

export function shared(a: Box, b: Box): Box {
  return [Math.max(a[0], b[0]), Math.max(a[1], b[1]), Math.min(a[2], b[2]), Math.min(a[3], b[3])];
}

export function inBox([x, y]: Point, [left, bottom, right, top]: Box): boolean {
  return x >= left && x <= right && y >= bottom && y <= top;
}

/** Closed lines, each as x and y in turn. */
export type Rings = readonly (readonly number[])[];

/** The box around closed lines. */
export function boxOfRings(rings: Rings): Box {
  let [left, bottom, right, top] = [
    Number.POSITIVE_INFINITY,
    Number.POSITIVE_INFINITY,
    Number.NEGATIVE_INFINITY,
    Number.NEGATIVE_INFINITY,
  ];
  for (const ring of rings)
    for (let at = 0; at < ring.length; at += 2) {
      const [x = 0, y = 0] = [ring[at], ring[at + 1]];
      if (x < left) left = x;
      if (x > right) right = x;
      if (y < bottom) bottom = y;
      if (y > top) top = y;
    }
  return [left, bottom, right, top];
}

/** True when a point lies in the rings, by the even-odd rule. */
export function inRings([x, y]: Point, rings: Rings): boolean {
  let inside = false;
  for (const ring of rings)
    for (let at = 0, last = ring.length - 2; at < ring.length; last = at, at += 2) {
      const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] = [ring[last], ring[last + 1], ring[at], ring[at + 1]];
      if (y1 > y !== y2 > y && x < ((x2 - x1) * (y - y1)) / (y2 - y1) + x1) inside = !inside;
    }
  return inside;
}

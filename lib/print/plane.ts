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

export function boxOf(points: readonly Point[]): Box {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
}

export function shared(a: Box, b: Box): Box {
  return [Math.max(a[0], b[0]), Math.max(a[1], b[1]), Math.min(a[2], b[2]), Math.min(a[3], b[3])];
}

export function inBox([x, y]: Point, [left, bottom, right, top]: Box): boolean {
  return x >= left && x <= right && y >= bottom && y <= top;
}

/** True when a point lies in the rings, by the even-odd rule. */
export function inRings([x, y]: Point, rings: readonly (readonly Point[])[]): boolean {
  let inside = false;
  for (const ring of rings) {
    ring.forEach(([x1, y1], at) => {
      const [x2, y2] = ring[(at + 1) % ring.length] ?? [x1, y1];
      if (y1 > y !== y2 > y && x < ((x2 - x1) * (y - y1)) / (y2 - y1) + x1) inside = !inside;
    });
  }
  return inside;
}

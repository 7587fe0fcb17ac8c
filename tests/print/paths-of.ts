import { getDocument, OPS } from "pdfjs-dist/legacy/build/pdf.mjs";

type Matrix = readonly [number, number, number, number, number, number];
export type Box = readonly [left: number, bottom: number, right: number, top: number];

const perMm = 72 / 25.4;

const times = ([a, b, c, d, e, f]: Matrix, [g, h, i, j, k, l]: Matrix): Matrix => [
  a * g + c * h,
  b * g + d * h,
  a * i + c * j,
  b * i + d * j,
  a * k + c * l + e,
  b * k + d * l + f,
];

function moved([a, b, c, d, e, f]: Matrix, [left, bottom, right, top]: Box): Box {
  const xs = [left, right].flatMap((x) => [bottom, top].map((y) => a * x + c * y + e));
  const ys = [left, right].flatMap((x) => [bottom, top].map((y) => b * x + d * y + f));
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
}

/** The box of every path that a PDF paints, in millimetres on paper, without line widths; of its first page. */
export async function pathsOf(pdf: Uint8Array): Promise<readonly Box[]> {
  const task = getDocument({ data: Uint8Array.from(pdf), verbosity: 0 });
  const page = await (await task.promise).getPage(1);
  const { fnArray, argsArray } = await page.getOperatorList();
  let now: Matrix = [1, 0, 0, 1, 0, 0];
  const stack: Matrix[] = [];
  const boxes: Box[] = [];
  for (const [index, operation] of fnArray.entries()) {
    const args: unknown = argsArray[index];
    if (operation === OPS.save) stack.push(now);
    else if (operation === OPS.restore) now = stack.pop() ?? now;
    else if (operation === OPS.transform) now = times(now, args as Matrix);
    else if (operation === OPS.constructPath) {
      const [paint, , box] = args as [number, unknown, Float32Array | null];
      if (paint === OPS.endPath || box === null) continue;
      const [left = 0, bottom = 0, right = 0, top = 0] = box;
      boxes.push(moved(now, [left, bottom, right, top]));
    }
  }
  await task.destroy();
  return boxes.map(
    ([left, bottom, right, top]): Box => [left / perMm, bottom / perMm, right / perMm, top / perMm],
  );
}

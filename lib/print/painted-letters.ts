import { type Operand, scanContent } from "./content-stream.ts";
import { type Letter, type Paint, PaintedPage } from "./painted-page.ts";
import type { PdfReader } from "./pdf-reader.ts";
import {
  type Box,
  boxOfRings,
  chained,
  type Matrix,
  moved,
  type Point,
  shared,
  unmoved,
} from "./plane.ts";

/** A pattern or a picture counts as middle grey. */
const patterned = 0.5;
const corners: readonly Point[] = [
  [0, 0],
  [1, 0],
  [1, 1],
  [0, 1],
];

const luma = ([r = 0, g = 0, b = 0]: readonly number[]): number =>
  0.299 * r + 0.587 * g + 0.114 * b;

/** Every letter that a page paints, in the order of painting, with what hides it then or later; in points from its lower left. */
export function paintedLetters(reader: PdfReader, page: number, paper: Box): readonly Letter[] {
  const painted = new PaintedPage(paper);
  const settings = new Map<number, Partial<Pick<Paint, "alpha" | "masked">>>();
  const settingOf = (object: number): Partial<Pick<Paint, "alpha" | "masked">> => {
    const known = settings.get(object);
    if (known) return known;
    const told = reader.textOf(object);
    const alpha = /\/ca ([\d.]+)/.exec(told)?.[1];
    const setting = {
      ...(alpha === undefined ? {} : { alpha: Number(alpha) }),
      ...(told.includes("/SMask") ? { masked: !told.includes("/SMask /None") } : {}),
    };
    settings.set(object, setting);
    return setting;
  };

  const paint = (content: number, resources: string, from: Paint): void => {
    const fonts = reader.named(resources, "Font");
    const forms = reader.named(resources, "XObject");
    const states = reader.named(resources, "ExtGState");
    const stack: Paint[] = [];
    let state = from;
    let [text, line]: [Matrix, Matrix] = [unmoved, unmoved];
    let rings: number[][] = [];
    let ring: number[] = [];
    let clipping = false;
    let numbers: readonly number[] = [];
    let operands: readonly Operand[] = [];
    const nameOf = (): string => String(operands.at(0)).slice(1);

    /** Says strings of glyphs, moved back by the numbers between them in thousandths of the size. */
    const say = (): void => {
      const { digits, text: says, widthOf } = reader.glyphsOf(state.font);
      const placed = chained(state.ctm, text);
      let pen = 0;
      for (const operand of operands) {
        if (typeof operand === "number") pen -= (operand / 1000) * state.size;
        if (typeof operand === "number" || operand[0] !== "<") continue;
        for (let at = 1; at + digits < operand.length; at += digits) {
          const code = Number.parseInt(operand.slice(at, at + digits), 16);
          const advance = (widthOf(code) / 1000) * state.size;
          painted.letter(says.get(code) ?? "\ufffd", pen + advance / 2, placed, state);
          pen += advance;
        }
      }
      text = chained(text, [1, 0, 0, 1, pen, 0]);
    };
    const begin = (): void => {
      ring = [];
      rings.push(ring);
    };
    const go = (x: number, y: number): void => {
      const [a, b, c, d, e, f] = state.ctm;
      ring.push(a * x + c * y + e, b * x + d * y + f);
    };
    const draw = (object: number): void => {
      const told = reader.textOf(object);
      if (!told.includes("/Subtype /Form")) {
        painted.cover([corners.flatMap((corner) => moved(state.ctm, corner))], state, patterned);
        return;
      }
      const matrix = /\/Matrix \[([^\]]*)\]/.exec(told)?.[1]?.trim().split(/\s+/).map(Number);
      const ctm = matrix ? chained(state.ctm, matrix as unknown as Matrix) : state.ctm;
      paint(object, told, { ...state, ctm, group: state.group * state.alpha, alpha: 1 });
    };
    const set = (object: number): void => {
      const { alpha = state.alpha, masked = state.masked } = settingOf(object);
      state = { ...state, alpha, masked };
    };
    const matrixOf = (): Matrix => [...numbers] as unknown as Matrix;
    const goAll = (count: number): void => {
      for (let at = 0; at < count; at += 2) go(numbers[at] ?? 0, numbers[at + 1] ?? 0);
    };
    const clip = (): void => {
      clipping = true;
    };
    const strokes = (): void => endPath(false);
    const fills = (): void => endPath(true);
    const endPath = (filled: boolean): void => {
      if (filled) painted.cover(rings, state, state.grey);
      if (clipping) state = { ...state, clip: shared(state.clip, boxOfRings(rings)) };
      rings = [];
      clipping = false;
    };
    const operators = new Map<string, () => void>([
      ["q", () => stack.push(state)],
      [
        "Q",
        () => {
          state = stack.pop() ?? state;
        },
      ],
      [
        "cm",
        () => {
          state = { ...state, ctm: chained(state.ctm, matrixOf()) };
        },
      ],
      [
        "rg",
        () => {
          state = { ...state, grey: luma(numbers) };
        },
      ],
      [
        "g",
        () => {
          state = { ...state, grey: numbers[0] ?? 0 };
        },
      ],
      [
        "scn",
        () => {
          state = { ...state, grey: patterned };
        },
      ],
      ["gs", () => set(states.get(nameOf()) ?? 0)],
      ["Do", () => draw(forms.get(nameOf()) ?? 0)],
      [
        "re",
        () => {
          const [x = 0, y = 0, width = 0, height = 0] = numbers;
          begin();
          for (const [right, up] of corners) go(x + right * width, y + up * height);
        },
      ],
      [
        "m",
        () => {
          begin();
          goAll(2);
        },
      ],
      ["l", () => goAll(2)],
      ["c", () => goAll(6)],
      ["v", () => goAll(4)],
      ["y", () => goAll(4)],
      ["W", clip],
      ["W*", clip],
      ["n", strokes],
      ["S", strokes],
      ["s", strokes],
      ["f", fills],
      ["f*", fills],
      ["B", fills],
      ["B*", fills],
      ["b", fills],
      ["b*", fills],
      [
        "sh",
        () =>
          painted.cover(
            [corners.flatMap(([x, y]) => [x * paper[2], y * paper[3]])],
            state,
            patterned,
          ),
      ],
      [
        "BT",
        () => {
          [text, line] = [unmoved, unmoved];
        },
      ],
      [
        "Tf",
        () => {
          state = { ...state, font: fonts.get(nameOf()) ?? 0, size: numbers[1] ?? 0 };
        },
      ],
      [
        "Tm",
        () => {
          line = matrixOf();
          text = line;
        },
      ],
      [
        "Td",
        () => {
          line = chained(line, [1, 0, 0, 1, numbers[0] ?? 0, numbers[1] ?? 0]);
          text = line;
        },
      ],
      ["Tj", say],
      ["TJ", say],
    ]);
    scanContent(reader.streamOf(content), (operator, given) => {
      operands = given;
      numbers = given as readonly number[];
      operators.get(operator)?.();
    });
  };

  const resources = reader.textOf(page);
  const start = { ctm: unmoved, clip: paper, grey: 0, alpha: 1, group: 1, masked: false };
  paint(reader.reference(resources, "Contents"), resources, { ...start, size: 0, font: 0 });
  return painted.letters;
}

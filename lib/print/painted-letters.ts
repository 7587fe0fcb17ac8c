import { type Operand, scanContent } from "./content-stream.ts";
import { PageGrid } from "./page-grid.ts";
import type { PdfReader } from "./pdf-reader.ts";
import {
  type Box,
  boxOfRings,
  chained,
  inBox,
  inRings,
  type Matrix,
  moved,
  type Point,
  type Rings,
  shared,
  unmoved,
} from "./plane.ts";

/** A letter as a page paints it: what it says, its size in points, how much it stands out, and what hides it. */
export type Letter = {
  readonly says: string;
  readonly size: number;
  readonly at: Point;
  /** 0 where it cannot be told from what lies beneath it, 1 for black on white. */
  readonly ink: number;
  hidden?: "outside the page" | "clipped" | "covered";
};

type State = {
  readonly ctm: Matrix;
  readonly clip: Box;
  readonly grey: number;
  readonly alpha: number;
  /** Alpha of all groups around. */
  readonly group: number;
  readonly masked: boolean;
  readonly size: number;
  readonly font: number;
};

/** A pattern or a picture counts as middle grey, and what lets less than this through as a cover. */
const patterned = 0.5;
const coverAlpha = 0.4;
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
  const letters: Letter[] = [];
  const known = new PageGrid<Letter>(paper);
  const areas = new PageGrid<{ readonly box: Box; readonly rings: Rings; readonly grey: number }>(
    paper,
  );

  const cover = (rings: Rings, { clip, alpha, group, masked }: State, grey: number): void => {
    if (rings.length === 0 || alpha * group < coverAlpha || masked) return;
    const box = shared(boxOfRings(rings), clip);
    const area = { box, rings, grey };
    for (const square of areas.within(box)) square.push(area);
    for (const square of known.within(box))
      for (const letter of square)
        if (!letter.hidden && inBox(letter.at, box) && inRings(letter.at, rings))
          letter.hidden = "covered";
  };
  const beneath = (at: Point): number =>
    areas.at(at).findLast(({ box, rings }) => inBox(at, box) && inRings(at, rings))?.grey ?? 1;
  const letter = (says: string, middle: number, placed: Matrix, state: State): void => {
    const at = moved(placed, [middle, state.size / 3]);
    const ground = beneath(at);
    const alpha = state.masked ? 0 : state.alpha * state.group;
    const grey = state.grey * alpha + ground * (1 - alpha);
    const clipped = inBox(at, state.clip) ? undefined : ("clipped" as const);
    const hidden = inBox(at, paper) ? clipped : ("outside the page" as const);
    const painted: Letter = {
      says,
      size: state.size * Math.hypot(placed[2], placed[3]),
      at,
      ink: Math.abs(ground - grey) / Math.max(ground, grey, 0.01),
      ...(hidden ? { hidden } : {}),
    };
    letters.push(painted);
    if (!hidden) known.at(at).push(painted);
  };

  const settings = new Map<number, Partial<Pick<State, "alpha" | "masked">>>();
  const settingOf = (object: number): Partial<Pick<State, "alpha" | "masked">> => {
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

  const paint = (content: number, resources: string, from: State): void => {
    const fonts = reader.named(resources, "Font");
    const forms = reader.named(resources, "XObject");
    const states = reader.named(resources, "ExtGState");
    const stack: State[] = [];
    let state = from;
    let [text, line]: [Matrix, Matrix] = [unmoved, unmoved];
    let rings: number[][] = [];
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
          letter(says.get(code) ?? "\ufffd", pen + advance / 2, placed, state);
          pen += advance;
        }
      }
      text = chained(text, [1, 0, 0, 1, pen, 0]);
    };
    const go = (x: number, y: number): void => {
      const [a, b, c, d, e, f] = state.ctm;
      rings.at(-1)?.push(a * x + c * y + e, b * x + d * y + f);
    };
    const draw = (object: number): void => {
      const told = reader.textOf(object);
      if (!told.includes("/Subtype /Form")) {
        cover([corners.flatMap((corner) => moved(state.ctm, corner))], state, patterned);
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
    const endPath = (filled: boolean): void => {
      if (filled) cover(rings, state, state.grey);
      if (clipping) state = { ...state, clip: shared(state.clip, boxOfRings(rings)) };
      [rings, clipping] = [[], false];
    };
    const operators: Readonly<Record<string, () => void>> = {
      q: () => stack.push(state),
      Q: () => {
        state = stack.pop() ?? state;
      },
      cm: () => {
        state = { ...state, ctm: chained(state.ctm, numbers as unknown as Matrix) };
      },
      rg: () => {
        state = { ...state, grey: luma(numbers) };
      },
      g: () => {
        state = { ...state, grey: numbers[0] ?? 0 };
      },
      scn: () => {
        state = { ...state, grey: patterned };
      },
      gs: () => set(states.get(nameOf()) ?? 0),
      Do: () => draw(forms.get(nameOf()) ?? 0),
      re: () => {
        const [x = 0, y = 0, width = 0, height = 0] = numbers;
        rings.push([]);
        for (const [right, up] of corners) go(x + right * width, y + up * height);
      },
      m: () => {
        rings.push([]);
        go(numbers[0] ?? 0, numbers[1] ?? 0);
      },
      l: () => go(numbers[0] ?? 0, numbers[1] ?? 0),
      c: () => {
        for (let at = 0; at < 6; at += 2) go(numbers[at] ?? 0, numbers[at + 1] ?? 0);
      },
      v: () => {
        for (let at = 0; at < 4; at += 2) go(numbers[at] ?? 0, numbers[at + 1] ?? 0);
      },
      y: () => {
        for (let at = 0; at < 4; at += 2) go(numbers[at] ?? 0, numbers[at + 1] ?? 0);
      },
      W: () => {
        clipping = true;
      },
      n: () => endPath(false),
      S: () => endPath(false),
      s: () => endPath(false),
      f: () => endPath(true),
      B: () => endPath(true),
      b: () => endPath(true),
      sh: () =>
        cover([corners.flatMap(([x, y]) => [x * paper[2], y * paper[3]])], state, patterned),
      BT: () => {
        [text, line] = [unmoved, unmoved];
      },
      Tf: () => {
        state = { ...state, font: fonts.get(nameOf()) ?? 0, size: numbers[0] ?? 0 };
      },
      Tm: () => {
        line = numbers as unknown as Matrix;
        text = line;
      },
      Td: () => {
        line = chained(line, [1, 0, 0, 1, numbers[0] ?? 0, numbers[1] ?? 0]);
        text = line;
      },
      Tj: say,
      TJ: say,
    };
    scanContent(reader.streamOf(content), (operator, given) => {
      operands = given;
      numbers = given.filter((operand) => typeof operand === "number");
      operators[operator.replace("*", "")]?.();
    });
  };

  const resources = reader.textOf(page);
  const start = { ctm: unmoved, clip: paper, grey: 0, alpha: 1, group: 1, masked: false };
  paint(reader.reference(resources, "Contents"), resources, { ...start, size: 0, font: 0 });
  return letters;
}

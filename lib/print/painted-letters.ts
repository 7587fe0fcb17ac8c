import { type Operand, scanContent } from "./content-stream.ts";
import { type Letter, type Paint, PaintedPage } from "./painted-page.ts";
import { Painter, patterned } from "./painter.ts";
import type { PdfReader } from "./pdf-reader.ts";
import { type Box, chained, type Matrix, unmoved } from "./plane.ts";

const luma = ([r = 0, g = 0, b = 0]: readonly number[]): number =>
  0.299 * r + 0.587 * g + 0.114 * b;
const matrixOf = ([a = 1, b = 0, c = 0, d = 1, e = 0, f = 0]: readonly number[]): Matrix => [
  a,
  b,
  c,
  d,
  e,
  f,
];

type Act = (painter: Painter, numbers: readonly number[]) => void;
const go: Act = (painter, points) => painter.go(points);
const clip: Act = (painter) => painter.clip();
const strokes: Act = (painter) => painter.endPath(false);
const fills: Act = (painter) => painter.endPath(true);

/** What an operator does that needs nothing but its numbers. A curve counts as the lines between its points. */
const acts: ReadonlyMap<string, Act> = new Map(
  Object.entries<Act>({
    q: (painter) => painter.save(),
    Q: (painter) => painter.restore(),
    cm: (painter, numbers) => painter.transform(matrixOf(numbers)),
    rg: (painter, numbers) => painter.set({ grey: luma(numbers) }),
    g: (painter, [grey = 0]) => painter.set({ grey }),
    scn: (painter) => painter.set({ grey: patterned }),
    re: (painter, numbers) => painter.rectangle(numbers),
    m: (painter, numbers) => {
      painter.begin();
      painter.go(numbers);
    },
    ...{ l: go, c: go, v: go, y: go },
    ...{ W: clip, "W*": clip },
    ...{ n: strokes, S: strokes, s: strokes },
    ...{ f: fills, "f*": fills, B: fills, "B*": fills, b: fills, "b*": fills },
    BT: (painter) => painter.placeText(unmoved),
    Tm: (painter, numbers) => painter.placeText(matrixOf(numbers)),
    Td: (painter, numbers) => painter.moveText(numbers),
  }),
);

type Setting = Partial<Pick<Paint, "alpha" | "masked">>;

/** What a graphics state dictionary sets. */
function settingOf(told: string): Setting {
  const alpha = /\/ca ([\d.]+)/.exec(told)?.[1];
  return {
    ...(alpha === undefined ? {} : { alpha: Number(alpha) }),
    ...(told.includes("/SMask") ? { masked: !told.includes("/SMask /None") } : {}),
  };
}

/** Paints a content stream and the forms that it draws. */
function paint(
  reader: PdfReader,
  page: PaintedPage,
  { content, resources, from }: { content: number; resources: string; from: Paint },
): void {
  const painter = new Painter(page, from);
  const known = new Map(
    ["Font", "XObject", "ExtGState"].map((kind) => [kind, reader.named(resources, kind)]),
  );
  const found = (kind: string, name: Operand | undefined): number =>
    known.get(kind)?.get(String(name).slice(1)) ?? 0;
  const draw = (object: number): void => {
    const told = reader.textOf(object);
    const { ctm, group, alpha } = painter.state;
    if (!told.includes("/Subtype /Form")) {
      painter.picture(ctm);
      return;
    }
    const matrix = /\/Matrix \[([^\]]*)\]/.exec(told)?.[1]?.trim().split(/\s+/).map(Number);
    const inner = matrix ? chained(ctm, matrixOf(matrix)) : ctm;
    const started = { ...painter.state, ctm: inner, group: group * alpha, alpha: 1 };
    paint(reader, page, { content: object, resources: told, from: started });
  };
  const say = (operands: readonly Operand[]): void =>
    painter.say(operands, reader.glyphsOf(painter.state.font));
  const named: ReadonlyMap<string, (operands: readonly Operand[]) => void> = new Map(
    Object.entries({
      gs: ([name]) => painter.set(settingOf(reader.textOf(found("ExtGState", name)))),
      Do: ([name]) => draw(found("XObject", name)),
      Tf: ([name, size]) => painter.set({ font: found("Font", name), size: Number(size) }),
      ...{ Tj: say, TJ: say },
      sh: () => painter.picture([page.paper[2], 0, 0, page.paper[3], 0, 0]),
    } satisfies Record<string, (operands: readonly Operand[]) => void>),
  );
  scanContent(reader.streamOf(content), (operator, operands) => {
    const act = acts.get(operator);
    if (act) act(painter, operands as readonly number[]);
    else named.get(operator)?.(operands);
  });
}

/** Every letter that a page paints, in the order of painting, with what hides it then or later; in points from its lower left. */
export function paintedLetters(reader: PdfReader, page: number, paper: Box): readonly Letter[] {
  const painted = new PaintedPage(paper);
  const resources = reader.textOf(page);
  const from = { ctm: unmoved, clip: paper, grey: 0, alpha: 1, group: 1, masked: false };
  paint(reader, painted, {
    content: reader.reference(resources, "Contents"),
    resources,
    from: { ...from, size: 0, font: 0 },
  });
  return painted.letters;
}

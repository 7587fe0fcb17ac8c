import { type Operand, scanContent } from "./content-stream.ts";
import type { Glyphs } from "./pdf-reader.ts";
import { TextRun } from "./text-run.ts";
import { written, writtenFine } from "./written.ts";

/** The kind of resource that an operator names. */
const kinds: Readonly<Record<string, string>> = {
  gs: "ExtGState",
  Tf: "Font",
  Do: "XObject",
  scn: "Pattern",
  SCN: "Pattern",
  sh: "Shading",
};
const fills = new Set(["f", "f*", "S", "s", "B", "B*", "b", "b*"]);
const shows = new Set([...fills, "Tj", "TJ", "Do", "sh", "BDC", "EMC"]);
const starts = new Set(["m", "re"]);
const pathEnd = / ([lcmh]|re)$/;
const matrices = new Set(["cm", "Tm"]);

/** A resource under its new name. */
export type NamedResource = { readonly kind: string; readonly old: string; readonly name: string };

/** Writes a content stream anew so that it depends on nothing but what is seen: resources named in the order of their use, no
 * ground painted before the first marked content of a page, nothing saved and restored around nothing, letters that follow
 * each other in one string, numbers in no more digits than show (a thousandth of a unit, a millionth in a matrix). `fontOf`
 * tells of a font by its old name; `used` is told every glyph. */
export function settleContent(
  text: string,
  {
    page,
    fontOf,
    used,
  }: {
    readonly page: boolean;
    readonly fontOf: (name: string) => Pick<Glyphs, "digits" | "widthOf">;
    readonly used: (font: string, glyph: number) => void;
  },
): { readonly text: string; readonly names: readonly NamedResource[] } {
  const names: NamedResource[] = [];
  const lines: string[] = [];
  /** For every open q: how many lines and names stood before it, and whether anything has been shown since. */
  const saved: { readonly at: number; readonly named: number; shown: boolean }[] = [];
  let ground = page;
  let pathFrom = 0;
  const say = (line: string): void => void lines.push(line);
  const run = new TextRun(say, used);
  const nameOf = (kind: string, old: string): string => {
    const known = names.find((one) => one.kind === kind && one.old === old);
    if (known) return `/${known.name}`;
    const name = `${kind[0]}${names.length}`;
    names.push({ kind, old, name });
    return `/${name}`;
  };
  const plain = (operator: string, operands: readonly Operand[]): string => {
    const write = matrices.has(operator) ? writtenFine : written;
    const kind = kinds[operator];
    let line = "";
    for (const operand of operands) {
      if (typeof operand === "number") line += write(operand);
      else line += kind && operand.startsWith("/") ? nameOf(kind, operand.slice(1)) : operand;
      line += " ";
    }
    return line + operator;
  };
  scanContent(text, (operator, operands) => {
    const around = saved.at(-1);
    if (around && shows.has(operator) && !(ground && fills.has(operator))) around.shown = true;
    if (run.takes(operator, operands)) return;
    run.end();
    if (operator === "q") {
      saved.push({ at: lines.length, named: names.length, shown: false });
    } else if (operator === "Q") {
      const { at = 0, named = 0, shown = true } = saved.pop() ?? {};
      if (!shown) {
        lines.length = at;
        names.length = named;
        return;
      }
      const outer = saved.at(-1);
      if (outer) outer.shown = true;
    } else if (operator === "BDC") {
      ground = false;
    } else if (ground && starts.has(operator) && !pathEnd.test(lines.at(-1) ?? "")) {
      pathFrom = lines.length;
    } else if (ground && fills.has(operator)) {
      lines.length = pathFrom;
      return;
    } else if (operator === "Tf") {
      const name = String(operands[0]).slice(1);
      run.setFont(name, Number(operands[1]), fontOf(name));
    }
    say(plain(operator, operands));
  });
  run.end();
  return { text: lines.join("\n"), names };
}

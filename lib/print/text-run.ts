import type { Operand } from "./content-stream.ts";
import type { Glyphs } from "./pdf-reader.ts";
import { written } from "./written.ts";

/** Letters are moved only where they stand further than this from where their widths put them, thousandths of the size. */
const slack = 4;

/** Gathers letters that a stream places one by one into one string with few moves in between. */
export class TextRun {
  readonly #say: (line: string) => void;
  readonly #used: (font: string, glyph: number) => void;
  #font = "";
  #size = 0;
  #glyphs: Pick<Glyphs, "digits" | "widthOf"> = { digits: 4, widthOf: () => 0 };
  /** The string so far: hex digits, and moves between closing and opening brackets. */
  #text = "";
  #moved = false;
  /** Where the next letter falls by widths and moves, and where the stream wants it, from the start of the line. */
  #pen = 0;
  #wanted = 0;

  constructor(say: (line: string) => void, used: (font: string, glyph: number) => void) {
    this.#say = say;
    this.#used = used;
  }

  setFont(font: string, size: number, glyphs: Pick<Glyphs, "digits" | "widthOf">): void {
    this.#font = font;
    this.#size = size;
    this.#glyphs = glyphs;
  }

  /** Takes a letter or a move along its line; false for anything else. */
  takes(operator: string, operands: readonly Operand[]): boolean {
    if (operator === "Tj") {
      this.#letters(String(operands[0]).slice(1, -1));
      return true;
    }
    if (operator === "Td" && operands[1] === 0 && this.#text !== "") {
      this.#wanted += Number(operands[0]);
      return true;
    }
    return false;
  }

  /** Ends the string; a move that came after its last letter is said by itself. */
  end(): void {
    if (this.#text === "") return;
    this.#say(this.#moved ? `[<${this.#text}>]TJ` : `<${this.#text}>Tj`);
    if (this.#wanted !== 0) this.#say(`${written(this.#wanted)} 0 Td`);
    this.#text = "";
    this.#moved = false;
    this.#pen = 0;
    this.#wanted = 0;
  }

  #letters(codes: string): void {
    const { digits, widthOf } = this.#glyphs;
    const back = Math.round(((this.#pen - this.#wanted) * 1_000) / this.#size);
    if (this.#text !== "" && Math.abs(back) > slack) {
      this.#text += `>${back}<`;
      this.#moved = true;
      this.#pen -= (back * this.#size) / 1_000;
    }
    for (let at = 0; at < codes.length; at += digits) {
      const glyph = Number.parseInt(codes.slice(at, at + digits), 16);
      this.#used(this.#font, glyph);
      this.#pen += (widthOf(glyph) * this.#size) / 1_000;
    }
    this.#text += codes;
  }
}

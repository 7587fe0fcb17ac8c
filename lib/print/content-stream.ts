/** An operand as it stands: a number, or a name, a string, a bracket or a dictionary in its own spelling. */
export type Operand = number | string;

const [dot, minus, slash, less, zero, nine] = [46, 45, 47, 60, 48, 57];
const [opening, closing] = [91, 93];
const end = -1;

const isSpace = (code: number): boolean => code === 10 || code === 32 || code === 13 || code === 9;
const isDigit = (code: number): boolean => code >= zero && code <= nine;
const endsToken = (code: number): boolean =>
  isSpace(code) ||
  code === less ||
  code === slash ||
  code === opening ||
  code === closing ||
  code === end;

/** Goes through a content stream as Chromium writes it (no literal strings, no inline pictures) and tells each operator with
 * its operands. */
export function scanContent(
  text: string,
  visit: (operator: string, operands: readonly Operand[]) => void,
): void {
  const bytes = Buffer.from(text, "latin1");
  const length = bytes.length;
  let operands: Operand[] = [];
  let at = 0;
  while (at < length) {
    let code = bytes[at] ?? end;
    if (isSpace(code)) {
      at++;
    } else if (isDigit(code) || code === minus || code === dot) {
      const sign = code === minus ? -1 : 1;
      if (code === minus) code = bytes[++at] ?? end;
      let whole = 0;
      for (; isDigit(code); code = bytes[++at] ?? end) whole = whole * 10 + code - zero;
      let parts = 1;
      if (code === dot)
        for (code = bytes[++at] ?? end; isDigit(code); code = bytes[++at] ?? end) {
          whole = whole * 10 + code - zero;
          parts *= 10;
        }
      operands.push((sign * whole) / parts);
    } else if (code === less || code === slash || code === opening || code === closing) {
      const from = at++;
      if (code === less)
        at = bytes[at] === less ? text.indexOf(">>", at) + 2 : text.indexOf(">", at) + 1;
      else if (code === slash) while (!endsToken(bytes[at] ?? end)) at++;
      operands.push(text.slice(from, at));
    } else {
      const from = at;
      while (!endsToken(bytes[at] ?? end)) at++;
      visit(text.slice(from, at), operands);
      operands = [];
    }
  }
}

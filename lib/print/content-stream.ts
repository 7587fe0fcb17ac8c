/** An operand as it stands: a number, or a name, a string, a bracket or a dictionary in its own spelling. */
export type Operand = number | string;

const [dot, minus, slash, less, zero, nine] = [46, 45, 47, 60, 48, 57];
const [opening, closing] = [91, 93];

const isSpace = (code: number): boolean => code === 10 || code === 32 || code === 13 || code === 9;
const endsToken = (code: number): boolean =>
  isSpace(code) || code === less || code === slash || code === opening || code === closing;

/** Where a token that starts at `at` with `code` ends. */
function endOf(text: string, at: number, code: number): number {
  if (code === less && text.charCodeAt(at + 1) === less) return text.indexOf(">>", at) + 2;
  if (code === less) return text.indexOf(">", at) + 1;
  if (code === opening || code === closing) return at + 1;
  let end = at + 1;
  while (end < text.length && !endsToken(text.charCodeAt(end))) end++;
  return end;
}

/** Goes through a content stream as Chromium writes it (no literal strings, no inline pictures) and tells each operator with
 * its operands; the list of operands is used again for the next. */
export function scanContent(
  text: string,
  visit: (operator: string, operands: readonly Operand[]) => void,
): void {
  const operands: Operand[] = [];
  let at = 0;
  while (at < text.length) {
    const code = text.charCodeAt(at);
    if (isSpace(code)) {
      at++;
    } else if ((code >= zero && code <= nine) || code === minus || code === dot) {
      let [whole, parts] = [0, 0];
      if (code === minus) at++;
      for (; at < text.length; at++) {
        const digit = text.charCodeAt(at);
        if (digit === dot) parts = 1;
        else if (digit < zero || digit > nine) break;
        else {
          whole = whole * 10 + digit - zero;
          parts *= 10;
        }
      }
      const value = parts > 1 ? whole / parts : whole;
      operands.push(code === minus ? -value : value);
    } else {
      const end = endOf(text, at, code);
      const token = text.slice(at, end);
      at = end;
      if (code === less || code === slash || code === opening || code === closing)
        operands.push(token);
      else {
        visit(token, operands);
        operands.length = 0;
      }
    }
  }
}

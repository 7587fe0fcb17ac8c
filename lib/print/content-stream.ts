/** An operand as it stands: a number, or a name, a string, a bracket or a dictionary in its own spelling. */
export type Operand = number | string;

const isSpace = (code: number): boolean => code === 10 || code === 32 || code === 13 || code === 9;
const isNumber = (code: number): boolean =>
  (code >= 48 && code <= 57) || code === 46 || code === 45 || code === 43;

/** Where a token that starts at `at` ends. */
function endOf(text: string, at: number): number {
  const code = text.charCodeAt(at);
  if (code === 60 && text.charCodeAt(at + 1) === 60) return text.indexOf(">>", at) + 2;
  if (code === 60) return text.indexOf(">", at) + 1;
  if (code === 91 || code === 93) return at + 1;
  let end = at + 1;
  for (; end < text.length; end++) {
    const next = text.charCodeAt(end);
    if (isSpace(next) || next === 60 || next === 47 || next === 91 || next === 93) break;
  }
  return end;
}

/** Goes through a content stream as Chromium writes it (no literal strings, no inline pictures) and tells each operator with
 * its operands; the list of operands is used again for the next. */
export function scanContent(
  text: string,
  visit: (operator: string, operands: readonly Operand[]) => void,
): void {
  const operands: Operand[] = [];
  for (let at = 0; at < text.length; ) {
    const code = text.charCodeAt(at);
    if (isSpace(code)) {
      at++;
      continue;
    }
    const end = endOf(text, at);
    const token = text.slice(at, end);
    at = end;
    if (isNumber(code)) operands.push(Number(token));
    else if (code === 60 || code === 47 || code === 91 || code === 93) operands.push(token);
    else {
      visit(token, operands);
      operands.length = 0;
    }
  }
}

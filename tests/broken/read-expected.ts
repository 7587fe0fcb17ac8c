/** An expected finding, written as a comment under the offending line: "# ^ rule-id: message", the caret under its column. */
export type Expected = {
  readonly line: number;
  readonly column: number;
  readonly rule: string;
  readonly message: string;
};

const note = /^(\s*#\s*)\^ ([a-z0-9-]+): (.*)$/;

/** The expected findings of a text; a comment belongs to the nearest line above that is none. A leading "<" puts the column at 1. */
export function readExpected(text: string): Expected[] {
  let line = 0;
  return text.split("\n").flatMap((row, index) => {
    const [, before, rule = "", message = ""] = note.exec(row) ?? [];
    const first = /^#< ([a-z0-9-]+): (.*)$/.exec(row);
    if (first) return [{ line, column: 1, rule: first[1] ?? "", message: first[2] ?? "" }];
    if (before === undefined) {
      line = index + 1;
      return [];
    }
    return [{ line, column: before.length + 1, rule, message }];
  });
}

const fractions = Array.from({ length: 1_000 }, (_, part) =>
  part === 0 ? "" : `.${String(part).padStart(3, "0").replace(/0+$/, "")}`,
);

/** A number to a thousandth in as few characters as a PDF allows. */
export function written(value: number): string {
  const thousandths = Math.round(Math.abs(value) * 1_000);
  if (thousandths === 0) return "0";
  const part = thousandths % 1_000;
  const whole = (thousandths - part) / 1_000;
  const text = `${whole === 0 ? "" : whole}${fractions[part]}`;
  return value < 0 ? `-${text}` : text;
}

/** A number of a matrix, to a millionth. */
export function writtenFine(value: number): string {
  const text = String(Math.round(value * 1_000_000) / 1_000_000);
  if (text.includes("e")) return "0";
  if (text.startsWith("0.")) return text.slice(1);
  return text.startsWith("-0.") ? `-${text.slice(2)}` : text;
}

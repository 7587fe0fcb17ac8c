/** A table for a terminal, the first column to the left, numbers to the right. */
export function table(
  head: readonly string[],
  rows: readonly (readonly (string | number)[])[],
): string {
  const cells = [
    head,
    ...rows.map((row) => row.map((cell) => (typeof cell === "number" ? cell.toFixed(2) : cell))),
  ];
  const widths = head.map((_, at) => Math.max(...cells.map((row) => row[at]?.length ?? 0)));
  return cells
    .map((row) =>
      row
        .map((cell, at) =>
          at === 0 ? cell.padEnd(widths[at] ?? 0) : cell.padStart(widths[at] ?? 0),
        )
        .join("  "),
    )
    .join("\n");
}

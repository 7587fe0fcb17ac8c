/** Hole labels as a span where they follow one another ("S1–S5"), else as a list ("S1, S4"). */
export function labelSpan(labels: readonly string[]): string {
  const runs: string[][] = [];
  for (const label of labels) {
    const last = runs.at(-1)?.at(-1);
    const follows =
      last !== undefined &&
      last[0] === label[0] &&
      Number(label.slice(1)) === Number(last.slice(1)) + 1;
    if (follows) runs.at(-1)?.push(label);
    else runs.push([label]);
  }
  return runs
    .map((run) => (run.length > 2 ? `${run[0]}–${run.at(-1)}` : run.join(", ")))
    .join(", ");
}

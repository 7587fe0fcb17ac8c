/** How many letters to add, take out, replace, or swap with their neighbour make one word of the other (the optimal string alignment distance); capitals count as small letters. */
function slipsBetween(one: string, other: string): number {
  const [a, b] = [one.toLowerCase(), other.toLowerCase()];
  let before: readonly number[] = [];
  let row: readonly number[] = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (let line = 1; line <= a.length; line += 1) {
    const next = [line];
    for (let column = 1; column <= b.length; column += 1) {
      const same = a[line - 1] === b[column - 1];
      const swapped = a[line - 1] === b[column - 2] && a[line - 2] === b[column - 1];
      next.push(
        Math.min(
          (row[column] ?? 0) + 1,
          (next[column - 1] ?? 0) + 1,
          (row[column - 1] ?? 0) + (same ? 0 : 1),
          swapped ? (before[column - 2] ?? 0) + 1 : Infinity,
        ),
      );
    }
    [before, row] = [row, next];
  }
  return row[b.length] ?? 0;
}

const byNearness = (name: string, known: readonly string[]) =>
  known.map((word) => ({ word, far: slipsBetween(name, word) })).sort((a, b) => a.far - b.far);

/** The known names a misspelt one most likely stands for: all that are equally near, none when none is. */
function nearestNames(name: string, known: readonly string[]): readonly string[] {
  const all = byNearness(name, known);
  const least = all[0]?.far ?? 0;
  return all
    .filter(
      ({ far, word }) =>
        far === least && far <= Math.max(2, Math.floor(Math.max(name.length, word.length) / 3)),
    )
    .map(({ word }) => word);
}

/** The first of the known names that a misspelt one most likely stands for. */
export const nearestName = (name: string, known: readonly string[]): string | undefined =>
  nearestNames(name, known)[0];

const most = 12;

/** "Did you mean …?" where one or two names are near, then what is known: the nearest twelve, in the order given. `what` names them: "keys". */
export function suggestion(name: string, known: readonly string[], what = ""): string {
  const near = nearestNames(name, known).slice(0, 2);
  const meant =
    near.length > 0 ? `Did you mean ${near.map((word) => `"${word}"`).join(" or ")}? ` : "";
  const listed = new Set(
    byNearness(name, known)
      .slice(0, most)
      .map(({ word }) => word),
  );
  const more = known.length > most ? `, and ${known.length - most} more` : "";
  return `${meant}Known${what && ` ${what}`}: ${known.filter((word) => listed.has(word)).join(", ") || "none"}${more}.`;
}

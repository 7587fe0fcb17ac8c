import { distance } from "fastest-levenshtein";

/** The known name a misspelt one most likely stands for, if any is near. */
export function nearestName(name: string, known: readonly string[]): string | undefined {
  const [best] = known
    .map((word) => ({ word, far: distance(name.toLowerCase(), word.toLowerCase()) }))
    .sort((a, b) => a.far - b.far);
  return best && best.far <= Math.max(2, Math.floor(Math.max(name.length, best.word.length) / 3))
    ? best.word
    : undefined;
}

/** "Did you mean …?" where a name is near, then what is known, at most twelve names. */
export function suggestion(name: string, known: readonly string[], what: string): string {
  const near = nearestName(name, known);
  const listed =
    known.slice(0, 12).join(", ") + (known.length > 12 ? `, and ${known.length - 12} more` : "");
  return `${near ? `Did you mean "${near}"? ` : ""}Known ${what}: ${listed || "none"}.`;
}

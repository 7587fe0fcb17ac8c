/** Words joined by commas or a colon, each part kept whole on its line by no-break spaces: a size never parts from its noun. */
export function unparted(words: string): string {
  return words.replace(/(?<![,:]) /g, "\u00a0");
}

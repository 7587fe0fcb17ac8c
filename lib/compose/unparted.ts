/** Words joined by commas, a colon or a semicolon, each part kept whole on its line by no-break spaces: a size never parts from its noun. */
export function unparted(words: string): string {
  return words.replace(/(?<![,:;]) /g, "\u00a0");
}

/** Words in which no number parts from the word before it or from its unit after it. */
export function sizesWhole(words: string): string {
  return words.replace(/ (?=\d)|(?<=\d) (?=mm\b|N·m|rings?\b)/g, "\u00a0");
}

/** Words of which each name that is held together by no-break spaces is taken apart where it is too wide for its line. */
export function partedWhereWide(words: string, isTooWide: (name: string) => boolean): string {
  return words
    .split(" ")
    .map((name) => (isTooWide(name) ? name.replaceAll("\u00a0", " ") : name))
    .join(" ");
}

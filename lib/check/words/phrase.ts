const escaped = (text: string): string => text.replace(/[.+?^${}()|[\]\\]/g, "\\$&");

/** The pattern of a phrase: whole words in any case, joined by spaces or hyphens; "heal*" begins a word, "#" is a number, "for|in" is either. */
export function phrase(words: string): RegExp {
  const parts = words.split(" ").map((word) => {
    const either = word
      .split("|")
      .map((one) => escaped(one).replaceAll("#", "\\d+(?:[.,]\\d+)?").replaceAll("*", "\\p{L}*"));
    return `(?:${either.join("|")})`;
  });
  return new RegExp(`(?<![\\p{L}\\p{N}])${parts.join("[\\s-]+")}(?![\\p{L}\\p{N}])`, "iu");
}

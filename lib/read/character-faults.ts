/** A character that must not stand in a library, with its place in the text (UTF-16 index). */
export type CharacterFault = { readonly index: number; readonly name: string };

const hidden: readonly (readonly [RegExp, string])[] = [
  [/[\u0000-\u0008\u000B-\u001F\u007F-\u009F]/u, "a control character"],
  [/[\u061C\u200E\u200F\u202A-\u202E\u2066-\u2069]/u, "a direction mark"],
  [
    /[\u180E\u200B-\u200D\u2028\u2029\u2060-\u2064\uFEFF]/u,
    "a zero-width or line-separating character",
  ],
  [/[\u{FDD0}-\u{FDEF}\p{Noncharacter_Code_Point}\uFFFD]/u, "a character that means nothing"],
  [/\p{Surrogate}/u, "half a character"],
];
const any = new RegExp(hidden.map(([{ source }]) => source).join("|"), "gu");

/** Every hidden or meaningless character of a text; tab and line feed are neither. */
export function characterFaults(text: string): CharacterFault[] {
  return [...text.matchAll(any)].map(({ index, 0: character }) => {
    const code = (character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, "0");
    const kind = hidden.find(([pattern]) => pattern.test(character))?.[1] ?? "a hidden character";
    return { index, name: `${kind} (U+${code})` };
  });
}

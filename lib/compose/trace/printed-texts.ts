import type { SheetView } from "../../model/sheet.ts";

/** Keys whose words are no facts of the library: they name the sheet itself, or count on it. */
const ofTheSheet = new Set([
  "id",
  "system",
  "shows",
  "origin",
  "formats",
  "format",
  "chains",
  "screw",
  "scaleBar",
  "scaleWords",
  "card",
  "page",
  "language",
  "fingerprint",
  "distance",
  "practice",
  "cardCode",
  "tally",
  "rest",
  "description",
]);

/** Hole numbers, the scale of a drawing, and the count of what stands on the site only. */
const ofThePaper =
  /\b[A-Z]\d{1,2}(–[A-Z]?\d{1,2})?\b|^\d+ more on the site\.$|^(\d+ mm.*, )?(drawn at )?[\d.]+ (of|times) true size\.?$/g;

/** Step numbers, the places of work on a case sheet, and the column numbers of a pairing sheet. */
const counted = new Set(["order", "columns"]);

const plain = (text: string): string => text.replaceAll("\u00a0", " ").replace(/\s+/g, " ").trim();

const entities: Readonly<Record<string, string>> = { amp: "&", lt: "<", gt: ">", quot: '"' };
const drawnTexts = (svg: string): readonly string[] =>
  [...svg.matchAll(/<text\b[^>]*>(.*?)<\/text>/gs)].map(([, inside = ""]) =>
    inside.replace(/<[^>]*>/g, "").replace(/&(\w+);/g, (all, name) => entities[name] ?? all),
  );

function* within(key: string, value: unknown): Generator<string> {
  if (typeof value === "string") {
    yield value;
  } else if (Array.isArray(value)) {
    for (const one of value) yield* within(key, one);
  } else if (typeof value === "object" && value !== null) {
    if ("svg" in value) {
      yield* drawnTexts(String(value.svg));
      return;
    }
    const step = "verb" in value;
    if ("noun" in value && "number" in value) yield `${value.noun} ${value.number}`;
    for (const [name, inner] of Object.entries(value)) {
      const said = "noun" in value && (name === "noun" || name === "number");
      if (ofTheSheet.has(name) || counted.has(name) || said || (step && name === "number"))
        continue;
      yield* within(name, inner);
    }
  }
}

/** Every text that a reader meets on a sheet and that should say facts of the library, drawn words too, each once; a noun and its number are one text. */
export function printedTexts(sheet: SheetView): readonly string[] {
  const { columns, ...rest } = sheet as SheetView & { readonly columns?: readonly unknown[] };
  const ladders = sheet.kind === "lengths" ? (columns ?? []) : [];
  const texts = [...within("", { ...rest, kind: "" }), ...within("", ladders)].map(plain);
  return [...new Set(texts)].filter((text) => /\d/.test(text.replace(ofThePaper, "")));
}

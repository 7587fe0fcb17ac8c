/** What a plate is named by. */
type Named = { readonly name: string; readonly side: "left" | "right" | "none" };

/** A plate's name with its side as a word in capitals, so that left and right are never told apart by a letter alone; a plate of no side by its name. */
export function plateName({ name, side }: Named): string {
  if (side === "none") return name;
  const own = new RegExp(`\\b${side}\\b`, "i");
  const word = side.toUpperCase();
  return own.test(name) ? name.replace(own, word) : `${name}, ${word}`;
}

/** The same in one length: with the number of holes in its row. */
export function plateTitle(plate: Named, holes: number): string {
  const sided = plateName(plate);
  const told = new RegExp(`\\b${holes} holes?\\b`).test(sided);
  return told ? sided : `${sided}, ${holes} ${holes === 1 ? "hole" : "holes"}`;
}

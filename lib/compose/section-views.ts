import type { Chain } from "../model/chain.ts";
import type { SectionSize, SectionView } from "../model/figure.ts";
import type { SheetFrame } from "../model/sheet-frame.ts";
import type { Composing } from "./composing.ts";
import { sectionParts } from "./section-parts.ts";

/** Which chains are shown cut, and what each cut shows. */
export type SectionsWanted = readonly (readonly [Chain, SectionView])[];

/** Cut views of chains, each with its words; a chain whose hole is in no plate has none. */
export function sectionViews(
  composing: Composing,
  id: string,
  wanted: SectionsWanted,
  size: SectionSize,
): NonNullable<SheetFrame["sections"]> {
  const { catalogue, pictures } = composing;
  return wanted.flatMap(([chain, view], index) => {
    const parts = sectionParts(composing, chain);
    if (parts === undefined) return [];
    const figure = pictures.section(
      `${id}-cut${index + 1}`,
      view,
      parts,
      catalogue.interfaces,
      size,
    );
    return [{ figure, words: `${figure.title}.` }];
  });
}

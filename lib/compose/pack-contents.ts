import type { SheetView } from "../model/sheet.ts";

/** One system's sheets on one family of paper, A5 maps lying with A4; the contents page is page 1. */
export type Pack = {
  readonly file: string;
  readonly title: string;
  readonly system: string;
  readonly paper: string;
  readonly banner: string;
  readonly defer: string;
  readonly language: string;
  readonly sheets: readonly SheetView[];
  readonly entries: readonly {
    readonly id: string;
    readonly title: string;
    readonly page: string;
  }[];
};

/** The packs of all systems, in order of system and paper; practice sheets stay out of them. */
export function packsOf(sheets: readonly SheetView[]): readonly Pack[] {
  const systems = [...new Set(sheets.map(({ system }) => system))]
    .filter((id) => id !== "general")
    .sort();
  return systems.flatMap((system) =>
    [
      { paper: "a4", name: "A4", has: (id: string) => id.startsWith("a4") || id.startsWith("a5") },
      { paper: "letter", name: "US Letter", has: (id: string) => id.startsWith("letter") },
    ].flatMap(({ paper, name, has }) => {
      const own = sheets.filter(
        (sheet) => sheet.system === system && has(sheet.format.id) && !sheet.practice,
      );
      const [first] = own;
      if (first === undefined) return [];
      return [
        {
          file: `packs/${system}.${paper}.pdf`,
          title: `${first.systemName}: all cards, ${name}`,
          system,
          paper: name,
          banner: first.banner,
          defer: first.defer,
          language: first.identity.language,
          sheets: own,
          entries: own.map(({ id, title }, index) => ({ id, title, page: String(index + 2) })),
        },
      ];
    }),
  );
}

import { type Vision, visions } from "../../model/vision.ts";
import type { Block, Page } from "../page.ts";
import type { SiteInput } from "../site-input.ts";

/** The values of a colour filter, row by row, alpha kept. */
const values = ({ matrix }: Vision): string =>
  [...matrix.map((row) => [...row, 0, 0].join(" ")), "0 0 0 1 0"].join(" ");

/** One sheet of each kind, and the symbols that stand together on sheets, as printed, in grey and as colour-blind eyes see them. */
export function proofPage({ sheets, prints, drawings, pdf }: SiteInput): Page {
  const kinds = [...new Set(sheets.map(({ kind }) => kind))];
  const shown = kinds.flatMap((kind) => {
    const sheet = sheets.find((one) => one.kind === kind && one.practice === undefined);
    return sheet === undefined ? [] : [sheet];
  });
  const [first] = drawings.proof.values();
  const rows = (first ?? []).map(({ title }, index) => ({
    name: title,
    seen: visions.flatMap(({ id, name }) => {
      const symbol = drawings.proof.get(id)?.[index];
      return symbol === undefined ? [] : [{ id, eye: name, symbol }];
    }),
  }));
  const blocks: Block[] = [
    {
      kind: "text",
      text: "No meaning stands in colour alone: each pair below differs in shape or pattern. Look at it in grey and as colour-blind eyes see it.",
    },
    { kind: "heading", text: "Symbols, marks and patterns", id: "symbols" },
    {
      kind: "visions",
      filters: visions.map((one) => ({ id: one.id, values: values(one) })),
      eyes: visions.map(({ name }) => name),
      rows,
    },
    ...shown.flatMap((sheet): Block[] => {
      const key = `${sheet.id}.${sheet.format.id}`;
      if (prints.get(key)?.thumb !== true) return [];
      const { width, height } = sheet.format;
      const views = visions.map(({ id, name }) => ({ id, name }));
      return [
        { kind: "heading", text: sheet.title, id: sheet.id },
        { kind: "seen", title: sheet.title, image: `thumbs/${key}.png`, width, height, views },
      ];
    }),
    ...(pdf
      ? []
      : [{ kind: "text", text: "Sheets are shown here once their PDFs are built." } as const]),
  ];
  return {
    path: "proof/index.html",
    title: "In grey and to colour-blind eyes",
    titled: true,
    blocks,
  };
}

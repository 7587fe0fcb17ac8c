import type { SheetView } from "../model/sheet.ts";
import type { WarningBox } from "../model/sheet-frame.ts";

function warned({ lines, more = "" }: WarningBox): readonly string[] {
  return [
    more,
    ...lines.map(({ subject, words, other }) =>
      [subject, words, other?.subject ?? "", other?.words ?? ""].join(""),
    ),
  ];
}

function rowsOf(sheet: SheetView): readonly string[] {
  switch (sheet.kind) {
    case "pairing":
      return sheet.rows
        .flatMap(({ called, cells }) => [called, ...cells.map(({ number }) => number)])
        .concat(warned(sheet.traps), warned(sheet.lookAlikes));
    case "lengths":
      return sheet.columns.flatMap(({ called, entries }) => [
        called,
        ...entries.map(({ reads }) => reads),
      ]);
    case "plate-map":
      return [
        sheet.sideWords,
        ...sheet.bands.flatMap(({ pairings }) =>
          pairings.flatMap(({ called, hand }) => [called, hand]),
        ),
        ...warned(sheet.traps),
      ];
    case "steps":
      return sheet.steps.flatMap(({ verb, say, inHand, handedWith, cautions }) => [
        verb,
        say,
        inHand,
        handedWith,
        ...cautions.map(({ text }) => text),
      ]);
    case "poster":
      return sheet.families.flatMap(({ rows }) =>
        rows.flatMap(({ called, cells }) => [
          called,
          ...cells.map(({ noun, number, note }) => `${noun} ${number}${note}`),
        ]),
      );
    case "pocket":
      return [...sheet.rows.flatMap(({ called, hand }) => [called, hand]), ...warned(sheet.traps)];
    case "labels":
      return sheet.labels.flatMap(({ slot, what, mark, order }) => [slot, what, mark, order]);
    case "tray":
      return [...sheet.contents.map(({ what }) => what), ...warned(sheet.lookAlikes)];
    case "mishaps":
      return sheet.rows.flatMap(({ name, acts, fetched }) => [name, ...acts, fetched]);
    case "case":
      return [
        ...sheet.rows.flatMap(({ called, hand }) => [called, hand]),
        ...warned(sheet.missing),
      ];
  }
}

/** Every text that must be met in a sheet's PDF: frame, cautions, rows. */
export function expectedTexts(sheet: SheetView): readonly string[] {
  const frame = [
    sheet.title,
    sheet.banner,
    sheet.defer,
    sheet.ask,
    sheet.identity.card,
    sheet.identity.fingerprint,
    sheet.everyScrew ?? "",
  ];
  return [
    ...frame,
    ...sheet.cautions.map(({ text }) => text),
    ...sheet.signed.map(({ words }) => words),
    ...rowsOf(sheet),
  ].filter((text) => text.trim() !== "");
}

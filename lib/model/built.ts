import type { SheetFit } from "./rule.ts";

/** A pack that was printed: all sheets of one system on one family of paper. */
export type BuiltPack = {
  readonly file: string;
  readonly title: string;
  readonly bytes: number;
  readonly system: string;
  readonly paper: string;
};

/** What printing made of one sheet in one format. */
export type BuiltPrint = { readonly pdfBytes: number; readonly thumb: boolean };

/** What was measured while a file was printed and read back from it. */
export type PrintFacts = Omit<SheetFit, "sheet">;

/** A printed file as a manifest remembers it: the SHA-256 of all it was made from, and what was measured then. */
export type PrintRecord = { readonly from: string; readonly facts: PrintFacts };

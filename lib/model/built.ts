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

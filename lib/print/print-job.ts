import type { PrintFacts } from "../model/built.ts";

/** One PDF to print: a sheet, or a pack of sheets from one HTML so that tags, links and outline stay whole. */
export type PrintJob = {
  readonly file: string;
  readonly title: string;
  readonly subject?: string;
  readonly keywords?: readonly string[];
  readonly issue?: string;
  readonly html: string;
  /** The first page's paper in millimetres. */
  readonly paper: readonly [width: number, height: number];
  readonly pages: number;
  /** ISO 639 code of the language it is in, where it is not the one of all. */
  readonly language?: string;
  /** Texts that must be met on the first page. */
  readonly texts: readonly string[];
  /** Texts that must be met on each page of a pack; in place of `texts`. */
  readonly textsByPage?: readonly (readonly string[])[];
  /** Whether it is wanted in greys too. */
  readonly grey?: boolean;
  /** Whether it is also shown on a screen, to measure what runs over and to take a small picture. */
  readonly thumbnail: boolean;
};

/** A printed PDF, read back, with a small PNG of its first page when one was asked for. */
export type Printed = {
  readonly file: string;
  readonly pdf: Uint8Array;
  /** The same in shades of grey only. */
  readonly grey?: Uint8Array;
  readonly thumbnail?: Uint8Array;
  readonly facts: PrintFacts;
};

/** What all PDFs of a build share. */
export type PrintOptions = {
  readonly css: string;
  readonly language: string;
  /** The day that the PDFs bear, ISO 8601. */
  readonly day: string;
  /** How many browsers print side by side; by default two when there is enough to do. */
  readonly lanes?: number;
};

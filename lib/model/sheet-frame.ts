import type { Figure } from "./figure.ts";
import type { Format } from "./format.ts";

/** A signed finding as printed: why something found is published as it stands, by which role and when. */
export type SignedView = { readonly id: string; readonly words: string };

/** A caution as it is printed. */
export type CautionView = {
  readonly id: string;
  readonly signal: "WARNING" | "CAUTION" | "NOTICE";
  readonly text: string;
};

/** What stands in the bottom band of every sheet. */
export type IdentityView = {
  readonly card: string;
  readonly issue: string;
  readonly date: string;
  readonly trayRevision: string;
  readonly reviewBy: string;
  readonly page: string;
  /** Paper, and how far from the eye its type is made for ("A4, for 80 cm"). */
  readonly distance: string;
  readonly language: string;
  readonly fingerprint: string;
  readonly sources: string;
};

/** What all sheets share. Every string that a reader must meet is here, already worded. */
export type SheetFrame = {
  /** Stable slug, e.g. "pebblefin-pairing-plates"; file names follow from it: `${id}.${format.id}.pdf`. */
  readonly id: string;
  readonly system: string;
  readonly systemName: string;
  readonly format: Format;
  readonly formats: readonly Format["id"][];
  readonly title: string;
  readonly lead: string;
  readonly generation: string;
  readonly banner: string;
  readonly logo: string;
  readonly ask: string;
  readonly defer: string;
  readonly identity: IdentityView;
  readonly cautions: readonly CautionView[];
  /** Findings about what the sheet shows that were signed instead of mended. */
  readonly signed: readonly SignedView[];
  /** What serves every screw of the sheet and is said once, not on each line ("Gauge 10–70 and handle S for every screw here."). */
  readonly everyScrew?: string;
  /** For a practice sheet: which card answers it, in words and by its id. */
  readonly practice?: { readonly words: string; readonly answers: string };
  /** Cut views where there is paper for them, each with the words beneath it. */
  readonly sections?: readonly { readonly figure: Figure; readonly words: string }[];
  /** The cut view stands beside the title instead of under the body. */
  readonly sectionsBeside?: true;
  /** Present where anything is at true size: a 50 mm bar. */
  readonly scaleBar?: Figure;
  /** Card, issue and fingerprint as a square code, put in when the sheet is whole. */
  readonly cardCode?: Figure;
  /** The definition a finding about this sheet points at. */
  readonly origin: string;
  /** What the sheet was made from: "chain/<id>", "plate/<laid plate>", else "<kind>/<id>". */
  readonly shows: readonly string[];
};

/** What a warning is about, set bold, and what is to be known of it; of two things that are compared, the other alike. */
export type WarningLine = {
  readonly subject: string;
  readonly words: string;
  readonly other?: { readonly subject: string; readonly words: string };
};

/** A box of ranked warnings. Where the page has no room for all, `more` says beside the title how many stand on the card's page of the site ("5 more on the site."), and `rest` is those; `rest` is not printed. */
export type WarningBox = {
  readonly title: string;
  readonly lines: readonly WarningLine[];
  readonly more?: string;
  readonly rest?: readonly WarningLine[];
};

import type { Figure } from "../model/figure.ts";
import type { CautionView, WarningLine } from "../model/sheet-frame.ts";

/** A word that may lead somewhere; `to` is a path from the site's root, `label` its name where the word alone would not say enough. */
export type Link = {
  readonly text: string;
  readonly to?: string;
  readonly note?: string;
  readonly label?: string;
};

/** One card as the site shows it, with a print for each of its formats; `width` and `height` are the paper's, rounded mm. */
export type CardEntry = {
  readonly title: string;
  readonly issue: string;
  readonly page: string;
  readonly thumbnail: string;
  readonly width: number;
  readonly height: number;
  readonly prints: readonly Link[];
};

/** A door of the start page: a question, what shows it, where it leads. */
export type Door = {
  readonly id: string;
  readonly title: string;
  readonly text: string;
  readonly figure?: Figure;
  readonly groups: readonly { readonly name: string; readonly links: readonly Link[] }[];
};

/** A piece of a page. */
export type Block =
  | { readonly kind: "text"; readonly text: string }
  | { readonly kind: "heading"; readonly text: string; readonly id: string }
  | { readonly kind: "links" | "row"; readonly links: readonly Link[] }
  | { readonly kind: "doors"; readonly doors: readonly Door[] }
  | {
      readonly kind: "table";
      readonly caption: string;
      readonly head: readonly string[];
      readonly rows: readonly (readonly (readonly Link[])[])[];
    }
  | {
      readonly kind: "facts";
      readonly facts: readonly { readonly name: string; readonly says: readonly Link[] }[];
    }
  | {
      readonly kind: "steps";
      readonly steps: readonly {
        readonly say: string;
        readonly notes: readonly string[];
        readonly cautions: readonly CautionView[];
      }[];
    }
  | { readonly kind: "cautions"; readonly cautions: readonly CautionView[] }
  | { readonly kind: "warnings"; readonly lines: readonly WarningLine[] }
  | { readonly kind: "figure"; readonly figure: Figure }
  | { readonly kind: "figures"; readonly figures: readonly Figure[] }
  | { readonly kind: "cards"; readonly cards: readonly CardEntry[] }
  | { readonly kind: "sheet"; readonly html: string }
  | { readonly kind: "reveal"; readonly summary: string; readonly html: string }
  | {
      readonly kind: "visions";
      readonly filters: readonly { readonly id: string; readonly values: string }[];
      /** A row for each symbol, in it the symbol as each eye sees it. */
      readonly eyes: readonly string[];
      readonly rows: readonly {
        readonly name: string;
        readonly seen: readonly {
          readonly id: string;
          readonly eye: string;
          readonly symbol: Figure;
        }[];
      }[];
    }
  | {
      readonly kind: "seen";
      readonly title: string;
      readonly image: string;
      readonly width: number;
      readonly height: number;
      readonly views: readonly { readonly id: string; readonly name: string }[];
    }
  | { readonly kind: "search" }
  | { readonly kind: "code"; readonly text: string };

/** One page of the site; `path` is from the root with forward slashes and ends in .html. A page whose sheet is its title shows no other. */
export type Page = {
  readonly path: string;
  readonly title: string;
  readonly titled: boolean;
  readonly blocks: readonly Block[];
};

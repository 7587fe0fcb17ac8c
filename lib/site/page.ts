import type { Figure } from "../model/figure.ts";

/** A word that may lead somewhere; `to` is a path from the site's root. */
export type Link = { readonly text: string; readonly to?: string; readonly note?: string };

/** One card in an index of cards. */
export type CardEntry = {
  readonly title: string;
  readonly format: string;
  readonly issue: string;
  readonly size: string;
  readonly page: string;
  readonly pdf: string;
  readonly thumbnail: string;
};

/** A piece of a page. */
export type Block =
  | { readonly kind: "text"; readonly text: string }
  | { readonly kind: "heading"; readonly text: string; readonly id: string }
  | { readonly kind: "links"; readonly links: readonly Link[] }
  | {
      readonly kind: "doors";
      readonly doors: readonly {
        readonly title: string;
        readonly text: string;
        readonly links: readonly Link[];
      }[];
    }
  | {
      readonly kind: "table";
      readonly caption: string;
      readonly head: readonly string[];
      readonly rows: readonly (readonly Link[])[];
    }
  | { readonly kind: "figure"; readonly figure: Figure }
  | { readonly kind: "cards"; readonly cards: readonly CardEntry[] }
  | { readonly kind: "sheet"; readonly html: string }
  | { readonly kind: "search" }
  | { readonly kind: "code"; readonly text: string };

/** One page of the site; `path` is from the root with forward slashes and ends in .html. */
export type Page = {
  readonly path: string;
  readonly title: string;
  readonly blocks: readonly Block[];
};

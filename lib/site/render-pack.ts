import { templateEnvironment } from "./nunjucks.ts";

const environment = templateEnvironment();

/** What a pack's contents page shows; `anchor` is the id of a sheet in the pack. */
export type PackContents = {
  readonly title: string;
  readonly banner: string;
  readonly defer: string;
  readonly language: string;
  readonly paperFormat: string;
  /** Which page of the pack it is, in words. */
  readonly mark: string;
  readonly entries: readonly {
    readonly anchor: string;
    readonly title: string;
    readonly page: string;
  }[];
};

/** A pack as one HTML: its contents page, then every sheet behind an anchor of its own. */
export function renderPack(
  contents: PackContents,
  sheets: readonly { readonly anchor: string; readonly mark: string; readonly html: string }[],
): string {
  const page = environment.render("packs/contents.njk", contents);
  return (
    page +
    sheets
      .map(({ anchor, mark, html }) =>
        html
          .replace("<article ", `<article id="${anchor}" `)
          .replace(/<\/article>\s*$/, `<p class="pack-page">${mark}</p></article>`),
      )
      .join("\n")
  );
}

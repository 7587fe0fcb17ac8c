import { templateEnvironment } from "./nunjucks.ts";

const environment = templateEnvironment();

/** What a pack's contents page shows; `anchor` is the id of a sheet in the pack. */
export type PackContents = {
  readonly title: string;
  readonly banner: string;
  readonly defer: string;
  readonly language: string;
  readonly paperFormat: string;
  readonly entries: readonly {
    readonly anchor: string;
    readonly title: string;
    readonly page: string;
  }[];
};

/** A pack as one HTML: its contents page, then every sheet behind an anchor of its own. */
export function renderPack(
  contents: PackContents,
  sheets: readonly { readonly anchor: string; readonly html: string }[],
): string {
  const page = environment.render("packs/contents.njk", contents);
  return (
    page +
    sheets
      .map(({ anchor, html }) => html.replace("<article ", `<article id="${anchor}" `))
      .join("\n")
  );
}

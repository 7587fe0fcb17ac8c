import { closeBrowser, openBrowser } from "./open-browser.ts";
import { type PrintOptions, printPage } from "./print-sheets.ts";
import { show, warmPage } from "./warm-page.ts";

/** A pack: its title and the HTML of a contents page and of all its sheets, in order. */
export type PackJob = { readonly file: string; readonly title: string; readonly html: string };

/** Prints each pack from one HTML, so that tags, links and outline stay whole. */
export async function printPacks(
  packs: readonly PackJob[],
  options: PrintOptions,
): Promise<Map<string, Uint8Array>> {
  const printed = new Map<string, Uint8Array>();
  const browser = await openBrowser();
  try {
    const warm = await warmPage(browser, options.css, options.language);
    for (const { file, title, html } of packs) {
      await show(warm, title, html);
      printed.set(file, await printPage(warm, options.day));
    }
  } finally {
    await closeBrowser(browser);
  }
  return printed;
}

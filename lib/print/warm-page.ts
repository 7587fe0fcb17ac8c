import type { Browser, CDPSession, Page } from "puppeteer";

/** A page that stays open: styles and fonts are loaded once, only its body is swapped. */
export type WarmPage = {
  readonly page: Page;
  readonly session: CDPSession;
  /** Whether its screen shows what is printed. */
  shown: boolean;
};

/** Every sheet of a print stands on pages of its own, in coordinates of its own: containment makes it independent of those before it, a width of its own shows all of it on a narrower screen, and a sheet whose size is fixed is laid out once. */
const apart =
  "@media screen { body { display: none; } } .job { break-after: page; contain: paint; width: max-content; } .job:last-child { break-after: auto; } .job > .sheet { contain: size; } .put-away { display: none; }";

/** Opens a page that holds the given styles (fonts as data: URLs), may ask nothing of anybody, and shows nothing on its screen unless it is told to. */
export async function warmPage(
  browser: Browser,
  { css, language }: { readonly css: string; readonly language: string },
): Promise<WarmPage> {
  const page = await browser.newPage();
  await page.setRequestInterception(true);
  page.on("request", (request) => {
    const { protocol } = new URL(request.url());
    if (protocol === "data:" || protocol === "about:") void request.continue();
    else void request.abort("aborted");
  });
  const policy = "default-src 'none'; style-src 'unsafe-inline'; font-src data:; img-src data:";
  await page.setContent(
    `<!doctype html><html lang="${language}"><head><meta charset="utf-8"><meta http-equiv="Content-Security-Policy" content="${policy}"><title>Trayleaf</title><style>${css}\n${apart}</style></head><body></body></html>`,
    { waitUntil: "load" },
  );
  // What turns TypeScript into JavaScript while it runs names inner functions through this.
  await page.evaluate("globalThis.__name = (named) => named");
  await page.evaluate(() => Promise.all([...document.fonts].map((face) => face.load())));
  return { page, session: await page.createCDPSession(), shown: false };
}

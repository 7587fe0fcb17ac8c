import type { Browser, CDPSession, Page } from "puppeteer";

/** A page that stays open: styles and fonts are loaded once, only its body is swapped. */
export type WarmPage = { readonly page: Page; readonly session: CDPSession };

/** Opens a page that holds the given styles (fonts as data: URLs), may ask nothing of anybody, and lays out as for print. */
export async function warmPage(browser: Browser, css: string, language: string): Promise<WarmPage> {
  const page = await browser.newPage();
  await page.setRequestInterception(true);
  page.on("request", (request) => {
    const { protocol } = new URL(request.url());
    if (protocol === "data:" || protocol === "about:") void request.continue();
    else void request.abort();
  });
  await page.emulateMediaType("print");
  const policy = "default-src 'none'; style-src 'unsafe-inline'; font-src data:; img-src data:";
  await page.setContent(
    `<!doctype html><html lang="${language}"><head><meta charset="utf-8"><meta http-equiv="Content-Security-Policy" content="${policy}"><title>Trayleaf</title><style>${css}</style></head><body></body></html>`,
    { waitUntil: "load" },
  );
  await page.evaluate(() => Promise.all([...document.fonts].map((face) => face.load())));
  return { page, session: await page.createCDPSession() };
}

/** Puts a fragment into the page under a title. */
export async function show({ page }: WarmPage, title: string, html: string): Promise<void> {
  await page.evaluate(
    (name, body) => {
      document.title = name;
      document.body.innerHTML = body;
    },
    title,
    html,
  );
  await page.evaluate(() => document.fonts.ready.then(() => true));
}

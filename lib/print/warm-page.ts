import type { Browser, CDPSession, Page } from "puppeteer";
import type { PrintFacts } from "../model/built.ts";

/** A page that stays open: styles and fonts are loaded once, only its body is swapped. */
export type WarmPage = { readonly page: Page; readonly session: CDPSession };

/** Opens a page that holds the given styles (fonts as data: URLs), may ask nothing of anybody, and lays out as for print. */
export async function warmPage(
  browser: Browser,
  { css, language }: { readonly css: string; readonly language: string },
): Promise<WarmPage> {
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

/** Puts a fragment into the page under a title; gives what runs over, in millimetres, of every region marked data-fit. */
export function show(
  { page }: WarmPage,
  { title, html }: { readonly title: string; readonly html: string },
): Promise<PrintFacts["overflow"]> {
  return page.evaluate(
    (name, body) => {
      document.title = name;
      document.body.innerHTML = body;
      const perMm = 96 / 25.4;
      const slack = 1.5;
      return [...document.querySelectorAll<HTMLElement>("[data-fit]")].flatMap((region) => {
        const by = Math.max(
          region.scrollHeight - region.clientHeight,
          region.scrollWidth - region.clientWidth,
        );
        return by > slack
          ? [{ what: region.dataset["fit"] ?? "region", by: Math.round((by / perMm) * 10) / 10 }]
          : [];
      });
    },
    title,
    html,
  );
}

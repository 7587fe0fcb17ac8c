import type { Browser, CDPSession, Page } from "puppeteer";
import type { PrintFacts } from "../model/built.ts";
import type { PrintJob } from "./print-job.ts";

/** A page that stays open: styles and fonts are loaded once, only its body is swapped. */
export type WarmPage = {
  readonly page: Page;
  readonly session: CDPSession;
  /** Whether its screen shows what is printed. */
  shown: boolean;
};

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
    `<!doctype html><html lang="${language}"><head><meta charset="utf-8"><meta http-equiv="Content-Security-Policy" content="${policy}"><title>Trayleaf</title><style>${css}\n@media screen { body { display: none; } }</style></head><body></body></html>`,
    { waitUntil: "load" },
  );
  await page.evaluate(() => Promise.all([...document.fonts].map((face) => face.load())));
  return { page, session: await page.createCDPSession(), shown: false };
}

/** Puts a fragment into the page under a title. With a thumbnail it is laid out on the screen as for print too, and what runs
 * over of every region marked data-fit is given in millimetres. */
export async function show(
  warm: WarmPage,
  { title, html, thumbnail }: Pick<PrintJob, "title" | "html" | "thumbnail">,
): Promise<PrintFacts["overflow"]> {
  const { page } = warm;
  if (warm.shown !== thumbnail) await page.emulateMediaType(thumbnail ? "print" : "screen");
  warm.shown = thumbnail;
  return page.evaluate(
    (name, body, measured) => {
      document.title = name;
      document.body.innerHTML = body;
      const perMm = 96 / 25.4;
      const slack = 1.5;
      const regions = measured ? document.querySelectorAll<HTMLElement>("[data-fit]") : [];
      return [...regions].flatMap((region) => {
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
    thumbnail,
  );
}

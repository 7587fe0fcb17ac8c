import puppeteer, { type Browser } from "puppeteer";
import { Stop } from "../model/stop.ts";

const quiet = [
  "--disable-gpu",
  "--disable-dev-shm-usage",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
  "--font-render-hinting=none",
];

/** A headless browser for printing; PUPPETEER_EXECUTABLE_PATH names it, TRAYLEAF_BROWSER_ARGS adds flags decided at set-up. */
export async function openBrowser(): Promise<Browser> {
  const executablePath = process.env["PUPPETEER_EXECUTABLE_PATH"];
  if (!executablePath) {
    throw new Stop(
      3,
      "No browser was found to print with.",
      "Run npm start, which finds one, or build with --no-pdf.",
    );
  }
  const asked = (process.env["TRAYLEAF_BROWSER_ARGS"] ?? "").split(" ").filter(Boolean);
  const root = process.getuid?.() === 0 ? ["--no-sandbox"] : [];
  try {
    return await puppeteer.launch({
      executablePath,
      args: [...new Set([...quiet, ...root, ...asked])],
      pipe: true,
      headless: true,
      timeout: 30_000,
      protocolTimeout: 30_000,
    });
  } catch (error) {
    const [first = ""] = String(error instanceof Error ? error.message : error).split("\n");
    throw new Stop(
      3,
      `The browser ${executablePath} did not start: ${first}.`,
      "Set PUPPETEER_EXECUTABLE_PATH to a Chromium that runs.",
    );
  }
}

/** Ends a browser and, should it not answer, kills it. */
export async function closeBrowser(browser: Browser): Promise<void> {
  const child = browser.process();
  const killed = setTimeout(() => child?.kill("SIGKILL"), 5_000);
  await browser.close().catch(() => child?.kill("SIGKILL"));
  clearTimeout(killed);
}

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
  "--host-resolver-rules=MAP * ~NOTFOUND",
];

/** A headless browser for printing; PUPPETEER_EXECUTABLE_PATH names it, TRAYLEAF_BROWSER_ARGS adds flags decided at set-up.
 * Stops with 3 when none is named, throws when it does not start. */
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
      timeout: 12_000,
      protocolTimeout: 240_000,
    });
  } catch (error) {
    const [first = ""] = String(error instanceof Error ? error.message : error).split("\n");
    throw new Error(`${executablePath} did not start: ${first}`);
  }
}

/** Ends a browser with all its processes, whatever state they are in, and waits until they are gone. */
export async function endBrowser(browser: Browser): Promise<void> {
  const child = browser.process();
  try {
    if (child?.pid) process.kill(-child.pid, "SIGKILL");
  } catch {
    child?.kill("SIGKILL");
  }
  await browser.close().catch(() => undefined);
}

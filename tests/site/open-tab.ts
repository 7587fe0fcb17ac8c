import puppeteer, { type Browser, type Page } from "puppeteer";

/** A browser for tests, which may ask this machine: the one that setting up found, else where a system keeps one. */
export function testBrowser(): Promise<Browser> {
  const executablePath = process.env["PUPPETEER_EXECUTABLE_PATH"] ?? "/usr/lib/chromium/chromium";
  const asked = (process.env["TRAYLEAF_BROWSER_ARGS"] ?? "").split(" ").filter(Boolean);
  const args = ["--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage", ...asked];
  return puppeteer.launch({ executablePath, args: [...new Set(args)], pipe: true });
}

/** A tab that notes every console line, error and request that leaves `home`, the beginning of every address it may ask for. */
export async function openTab(
  browser: Browser,
  home: string,
  width: number,
): Promise<{ tab: Page; noise: string[] }> {
  const tab = await browser.newPage();
  const noise: string[] = [];
  tab.on("console", (line) => noise.push(line.text()));
  tab.on("pageerror", (error) => noise.push(String(error)));
  tab.on("requestfailed", (request) => noise.push(`failed: ${request.url()}`));
  tab.on("request", (request) => {
    const url = request.url();
    if (!url.startsWith(home) && !url.startsWith("data:")) noise.push(`outside: ${url}`);
  });
  await tab.setViewport({ width, height: 800 });
  return { tab, noise };
}

import type { Browser } from "puppeteer";

const beat = 2_000;
const silentBeats = 4;

/** Waits for a browser's work as long as the browser answers and gets on with it: fails when its processes have used no
 * processor time for eight seconds, or when a page of it crashes. Slow work on a busy machine is not taken for a hang. */
export async function whileAlive<T>(work: Promise<T>, browser: Browser): Promise<T> {
  const pulse = await browser.target().createCDPSession();
  return new Promise((done, fail) => {
    let silent = 0;
    let used = -1;
    const timer = setInterval(() => {
      if (++silent > silentBeats) fail(new Error("it does not answer"));
      pulse.send("SystemInfo.getProcessInfo").then(
        ({ processInfo }) => {
          const now = processInfo.reduce((sum, { cpuTime }) => sum + cpuTime, 0);
          if (now > used) silent = 0;
          used = now;
        },
        () => undefined,
      );
    }, beat);
    work.then(done, fail).finally(() => clearInterval(timer));
  });
}

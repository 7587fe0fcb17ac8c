import type { Browser, Page } from "puppeteer";

const beat = 1_500;
const silentBeats = 3;

/** Waits for a browser's work as long as the browser answers and gets on with it: fails when its pages have used no
 * processor time for six seconds, or when the page crashes. Slow work on a busy machine is not taken for a hang. */
export function whileAlive<T>(work: Promise<T>, browser: Browser, page?: Page): Promise<T> {
  return new Promise((done, fail) => {
    const pulse = browser.target().createCDPSession();
    pulse.catch(() => undefined);
    let silent = 0;
    let used = -1;
    const timer = setInterval(() => {
      if (++silent > silentBeats) fail(new Error("it does not answer"));
      pulse
        .then((session) => session.send("SystemInfo.getProcessInfo"))
        .then(({ processInfo }) => {
          const now = processInfo.reduce(
            (sum, { type, cpuTime }) => (type === "renderer" ? sum + cpuTime : sum),
            0,
          );
          if (now > used) silent = 0;
          used = now;
        })
        .catch(() => undefined);
    }, beat);
    page?.once("error", fail);
    work.then(done, fail).finally(() => {
      clearInterval(timer);
      page?.off("error", fail);
      pulse.then((session) => session.detach()).catch(() => undefined);
    });
  });
}

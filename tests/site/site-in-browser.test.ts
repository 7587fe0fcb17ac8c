import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { pathToFileURL } from "node:url";
import type { Browser, Page } from "puppeteer";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { builtSite } from "./built-site.ts";
import { openTab, testBrowser } from "./open-tab.ts";
import { pageKinds } from "./page-kinds.ts";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
let browser: Browser;
let home: string;

beforeAll(async () => {
  home = pathToFileURL(await builtSite()).href;
  browser = await testBrowser();
}, 240_000);
afterAll(() => browser?.close());

/** What axe finds of any impact, each with the first element it is about. */
async function audit(tab: Page, rules: readonly string[]): Promise<string[]> {
  await tab.evaluate(axe);
  const only = rules.length > 0 ? { runOnly: { type: "rule", values: rules } } : {};
  return (await tab.evaluate(
    `axe.run(document, { preload: false, resultTypes: ["violations"], ...${JSON.stringify(only)} }).then(({ violations }) =>
       violations
         .map(({ id, nodes }) => id + ": " + nodes[0].html.slice(0, 200)))`,
  )) as string[];
}

/** Links and fields outside the sheet that a thumb could miss: under 44 px in a direction. */
const smallTargets = `[...document.querySelectorAll(".chrome a:not(.skip-link), .chrome input")]
  .map((one) => ({ one, box: one.getBoundingClientRect() }))
  .filter(({ box }) => box.width > 0 && (box.width < 44 || box.height < 44))
  .map(({ one, box }) => one.outerHTML + " " + box.width + " x " + box.height)`;

/** How far the page can be scrolled sideways, px. */
const sideways = `document.documentElement.scrollWidth - document.documentElement.clientWidth`;

/** What of a sheet stands beyond the edge of the screen, or of a piece of the page that would have to be scrolled. */
const beyond = `[
  ...[...document.querySelectorAll(".paper")].filter((one) => one.scrollWidth > one.clientWidth),
  ...[...document.querySelectorAll(".sheet *")].filter(
    (one) => one.getBoundingClientRect().right > document.documentElement.clientWidth + 0.5),
].map((one) => one.outerHTML.slice(0, 120))`;

/** Every element of a sheet with its place in it, colours and type, as one text. */
const looks = `(() => {
  const sheet = document.querySelector(".sheet");
  const from = sheet.getBoundingClientRect();
  const seen = [...sheet.querySelectorAll("*:not(svg *)")].filter((one) => one.getClientRects().length > 0);
  return [sheet, ...seen].map((one) => {
    const box = one.getBoundingClientRect();
    const style = getComputedStyle(one);
    const place = [box.left - from.left, box.top - from.top, box.width, box.height].map(Math.round);
    return [one.tagName, ...place, style.color, style.backgroundColor, style.fontSize, style.fontWeight, style.lineHeight].join(" ");
  }).join("\\n");
})()`;

/** The width of the outline around what has the focus, and where it stands. */
const focused = `(() => {
  const one = document.activeElement;
  const { outlineStyle, outlineWidth } = getComputedStyle(one);
  const box = one.getBoundingClientRect();
  return { name: one.textContent, width: outlineStyle === "none" ? 0 : parseFloat(outlineWidth), seen: box.left >= 0 && box.width > 0 };
})()`;

describe("the site opened from a folder", () => {
  it.each(pageKinds)(
    "shows %s quietly, wide enough, large enough to touch, and with nothing that axe finds",
    async (path) => {
      const { tab, noise } = await openTab(browser, home, 320);
      await tab.goto(`${home}/${path}`);
      const narrow = {
        wide: await tab.evaluate(sideways),
        small: await tab.evaluate(smallTargets),
      };
      await tab.setViewport({ width: 1280, height: 800 });
      const small = await tab.evaluate(smallTargets);
      const light = await audit(tab, []);
      await tab.emulateMediaFeatures([{ name: "prefers-color-scheme", value: "dark" }]);
      const dark = await audit(tab, ["color-contrast"]);
      expect({ noise, narrow, small, light, dark }).toEqual({
        noise: [],
        narrow: { wide: 0, small: [] },
        small: [],
        light: [],
        dark: [],
      });
      await tab.close();
    },
    60_000,
  );

  it.each(pageKinds.filter((path) => /^cards\/[^/]+\//.test(path)))(
    "shows the sheet of %s as it is printed, in the dark theme too",
    async (path) => {
      const { tab } = await openTab(browser, home, 1280);
      await tab.emulateMediaFeatures([{ name: "prefers-color-scheme", value: "dark" }]);
      await tab.goto(`${home}/${path}`);
      const shown = await tab.evaluate(looks);
      await tab.$eval('link[href$="site.css"]', (link) => link.remove());
      expect(shown).toEqual(await tab.evaluate(looks));
      expect(shown).toContain("rgb(0, 0, 0)");
      await tab.close();
    },
    60_000,
  );

  it.each([
    ["screws/locking-35.html", "What to hand over, in order", "All cards"],
    ["cards/pebblefin-pairing-plates/a4-landscape.html", "print at 100 %", "Same card"],
  ])(
    "prints of %s what it says, without the links around it",
    async (path, printed, left) => {
      const { tab } = await openTab(browser, home, 1024);
      await tab.goto(`${home}/${path}`);
      await tab.emulateMediaType("print");
      const text = String(await tab.evaluate("document.body.innerText"));
      expect(text).toContain(printed);
      expect(text).not.toContain(left);
      expect(text).toContain("INVENTED DATA");
      await tab.close();
    },
    30_000,
  );

  it.each(
    ["pebblefin-pairing-plates", "gatepost-pairing-lag"].flatMap((card) =>
      [360, 412].map((width) => [card, width] as const),
    ),
  )(
    "shows all of %s on a screen %i px wide with nothing to be moved sideways",
    async (card, width) => {
      const { tab, noise } = await openTab(browser, home, width);
      for (const paper of ["a4", "letter"]) {
        await tab.goto(`${home}/cards/${card}/${paper}-landscape.html`);
        const shown = {
          page: await tab.evaluate(sideways),
          beyond: await tab.evaluate(beyond),
          told: await tab.$$eval(".cell .noun", (nouns) =>
            nouns
              .filter((noun) => noun.getClientRects().length === 0)
              .map((noun) => noun.outerHTML),
          ),
          found: await audit(tab, []),
        };
        expect({ noise, ...shown }).toEqual({
          noise: [],
          page: 0,
          beyond: [],
          told: [],
          found: [],
        });
      }
      await tab.close();
    },
    60_000,
  );

  it("has an audit that sees grey on grey", async () => {
    const { tab } = await openTab(browser, home, 1024);
    await tab.goto(`${home}/about/index.html`);
    await tab.evaluate(`document.querySelector("h1").style.color = "rgb(200, 200, 200)"`);
    expect(await audit(tab, ["color-contrast"])).toHaveLength(1);
    await tab.close();
  }, 30_000);

  it.each(["index.html", "marks/index.html", "cards/case-a/a4-landscape.html"])(
    "shows where the keyboard is on %s",
    async (path) => {
      const { tab } = await openTab(browser, home, 1024);
      await tab.goto(`${home}/${path}`);
      for (let press = 0; press < 9; press += 1) {
        await tab.keyboard.press("Tab");
        const { name, width, seen } = (await tab.evaluate(focused)) as {
          name: string;
          width: number;
          seen: boolean;
        };
        expect({ name, seen, visible: width >= 2 }).toEqual({ name, seen: true, visible: true });
      }
      await tab.close();
    },
    60_000,
  );

  it("prints a card's page as the card alone", async () => {
    const { tab } = await openTab(browser, home, 1280);
    await tab.goto(`${home}/cards/case-a/a4-landscape.html`);
    const pdf = Buffer.from(await tab.pdf({ preferCSSPageSize: true })).toString("latin1");
    expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
    await tab.close();
  }, 30_000);
});

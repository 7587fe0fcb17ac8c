import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { Printed } from "../../lib/print/print-job.ts";
import { printJobs } from "../../lib/print/print-jobs.ts";

const given = process.env["PUPPETEER_EXECUTABLE_PATH"];
beforeAll(() => {
  process.env["PUPPETEER_EXECUTABLE_PATH"] ??= "/usr/lib/chromium/chromium";
});
afterAll(() => {
  if (given === undefined) delete process.env["PUPPETEER_EXECUTABLE_PATH"];
});

const caution = "Make the last turns by hand.";
const css =
  "@page { size: 210mm 148mm; margin: 0; } * { margin: 0; } p { font: 4mm sans-serif; position: relative; }";
const covered = (over: string): string =>
  `<p>${caution}</p><div class="over"></div><style>.over { position: absolute; inset: 0; ${over} }</style>`;
const styled = (style: string): string =>
  `<p class="c">${caution}</p><style>.c { ${style} }</style>`;

/** What a print of some HTML lacks of the caution. */
async function lacking(html: string): Promise<readonly string[]> {
  const all: Printed[] = [];
  await printJobs(
    [
      {
        file: "x.pdf",
        title: "x",
        html,
        paper: [210, 148],
        pages: 1,
        texts: [caution],
        thumbnail: true,
      },
    ],
    { css, language: "en", day: "2026-10-01" },
    (printed) => void all.push(printed),
  );
  return all[0]?.facts.missing ?? ["nothing was printed"];
}

describe("a caution in a finished PDF", () => {
  test.each([
    ["in black on white", styled("color: #000")],
    ["in the dark accent", styled("color: #17405f")],
    ["in white on black", styled("color: #fff; background: #000")],
    ["over a box of its own", `<p>${caution}</p><style>p { background: #eee; }</style>`],
    ["under what hardly tints it", covered("background: rgb(255 255 255 / 10%)")],
  ])("is met %s", async (_title, html) => {
    expect(await lacking(html)).toEqual([]);
  });

  test.each([
    ["white", styled("color: #fff"), /too faint: 0 %/],
    ["pale grey", styled("color: #aaa"), /too faint: 33 %/],
    ["almost transparent", styled("opacity: 0.1"), /too faint: 10 %/],
    ["of transparent colour", styled("color: rgb(0 0 0 / 20%)"), /too faint: 20 %/],
    ["covered by a box", covered("background: #fff"), /covered/],
    ["covered by a gradient", covered("background: linear-gradient(#fff, #fff)"), /covered/],
    ["covered in one word", covered("background: #fff; left: 8mm; width: 12mm"), /covered/],
    [
      "of a size to overlook",
      styled("font-size: 1mm"),
      /too small: 1\.\d+ mm, at least 2\.44 mm|too small: 1\.00/,
    ],
    ["scaled down", styled("transform: scale(0.2)"), /too small/],
    ["of no size", styled("font-size: 0"), /by hand\.$/],
    [
      "clipped in its height",
      styled("height: 1mm; overflow: hidden"),
      /clipped|covered|by hand\.$/,
    ],
    [
      "clipped in its width",
      styled("width: 30mm; white-space: nowrap; overflow: hidden"),
      /by hand/,
    ],
    ["off the page", styled("left: -300mm"), /by hand/],
    ["not displayed", styled("display: none"), /by hand\.$/],
    ["hidden", styled("visibility: hidden"), /by hand\.$/],
    ["on the second page", styled("break-before: page; margin-top: 200mm"), /by hand/],
  ])("is missed when it is %s", async (_title, html, why) => {
    const [missed = "met"] = await lacking(html);
    expect(missed).toMatch(why);
    expect(missed).toContain(caution);
  });
});

import { describe, expect, test } from "vitest";
import { groupJobs } from "../../lib/print/group-jobs.ts";
import type { PrintJob } from "../../lib/print/print-job.ts";
import { settleContent } from "../../lib/print/settle-content.ts";

/** Every glyph half as wide as the type is high. */
const font = { digits: 4, widthOf: () => 500 };
const settled = (text: string, page = true) =>
  settleContent(text, { page, fontOf: () => font, used: () => undefined });
const drawn = "/Art <</MCID 0 >>BDC\n/G31 gs\n0 0 10.12345 .50004 re\nf\nEMC";

describe("a stream of drawing, settled", () => {
  test("is the same whatever ground the page before left beneath it", () => {
    const first = `q\n1 1 1 rg\n/G3 gs\n0 0 794 1123 re\nf\nQ\nq\n0 0 2480 3508 re\nW* n\n${drawn}\nQ`;
    const later = `q\n3.125 0 0 3.125 0 -28300 cm\n/G7 gs\n0 9056 794 1123 re\nf\nQ\nq\n0 0 2480 3508 re\nW* n\n${drawn}\nQ`;
    expect(settled(later)).toEqual(settled(first));
    expect(settled(first).text).not.toContain("1123");
  });

  test("names what it uses in the order of its use, and writes thousandths", () => {
    const { text, names } = settled(`${drawn}\n/G4 gs\n0 0 m\n1 1 l\nS\n/G31 gs`);
    expect(text).toBe(
      "/Art <</MCID 0 >> BDC\n/E0 gs\n0 0 10.123 .5 re\nf\nEMC\n/E1 gs\n0 0 m\n1 1 l\nS\n/E0 gs",
    );
    expect(names.map(({ old }) => old)).toEqual(["G31", "G4"]);
  });

  test("joins letters that stand where their widths put them, and moves the others", () => {
    const line = "BT\n/F4 10 Tf\n<0001> Tj\n5.001 0 Td <0002> Tj\n4.5 0 Td <0003> Tj\nET";
    expect(settled(line, false).text).toBe("BT\n/F0 10 Tf\n[<00010002>50<0003>]TJ\n9.501 0 Td\nET");
  });
});

describe("sheets that are printed together", () => {
  const job = (html: string, pages = 1): PrintJob => ({
    ...{ file: html, title: "", html, paper: [210, 297], pages, texts: [], thumbnail: false },
  });
  const groups = (jobs: readonly PrintJob[], lanes = 1) =>
    groupJobs(jobs, lanes).map((group) => group.map(({ html }) => html));

  test("share no id, and no print with a pack", () => {
    const [a, b, c] = ['<p id="a">', '<p id="b">', '<p id="a"><p id="c">'].map((html) => job(html));
    if (!a || !b || !c) throw new Error("No jobs");
    const pack = job("<p>", 3);
    expect(groups([a, b, c, pack])).toEqual([[pack.html], [a.html, b.html], [c.html]]);
  });

  test("are no more than a dozen, and spread over the browsers", () => {
    const jobs = Array.from({ length: 30 }, (_, index) => job(`<p>${index}`));
    expect(groups(jobs).map(({ length }) => length)).toEqual([12, 12, 6]);
    expect(groups(jobs.slice(0, 10), 2).map(({ length }) => length)).toEqual([5, 5]);
  });
});

import { describe, expect, test } from "vitest";
import { screw } from "../../../lib/draw/figures/screw.ts";
import { edgesOf, extent, readSvg } from "../read-svg.ts";
import { sampleInterfaces } from "../sample-interfaces.ts";
import { sampleScrews } from "../sample-screws.ts";

const outline = 0.8;
const rows = sampleScrews.map((one) => [one.name, one] as const);
const drawn = (one: (typeof sampleScrews)[number], length: number) =>
  screw("s", one, sampleInterfaces, length);

describe("a screw's picture", () => {
  test.each(rows)("of a %s is as long as asked, counted as the screw counts it", (_name, one) => {
    for (const length of [40, 45.5, 60]) {
      const under = one.length_counts_from === "under-head" ? one.head.height / 1000 : 0;
      expect(drawn(one, length * 1000).width - outline).toBeCloseTo(length + under, 2);
    }
  });

  test.each(rows)("of a %s has the true thread, core, pitch and head", (_name, one) => {
    const svg = drawn(one, 50_000).svg;
    const thread = edgesOf(svg, "thread").find(
      ({ attributes }) => attributes["data-pitch"] === String(one.pitch / 1000),
    );
    const widest = Math.max(
      ...edgesOf(svg, "thread")
        .filter(({ attributes }) => attributes["data-pitch"] === String(one.pitch / 1000))
        .map((each) => extent(each, 1)),
    );
    expect(thread?.attributes).toMatchObject({
      "data-major": String(one.major / 1000),
      "data-core": String(one.core / 1000),
    });
    expect(widest).toBeCloseTo(one.major / 1000, 1);
    const head = readSvg(svg).find(({ attributes }) => attributes.class === "head");
    expect(head?.attributes).toMatchObject({
      "data-head": one.head.form,
      "data-diameter": String(one.head.diameter / 1000),
    });
    expect(edgesOf(svg, "recess")).toHaveLength(1);
  });

  test("shows a plain shaft only where the thread is partial, at its true thickness", () => {
    const shafts = sampleScrews.map((one) => edgesOf(drawn(one, 50_000).svg, "shaft"));
    expect(shafts.map((found) => found.length)).toEqual([0, 0, 1]);
    const [shaft] = shafts[2] ?? [];
    expect(shaft && extent(shaft, 1)).toBeCloseTo(4.4, 3);
    expect(shaft && extent(shaft, 0)).toBeCloseTo(50 - 32, 3);
  });

  test("tells a cutting tip from a rounded one", () => {
    expect(
      sampleScrews.map((one) => edgesOf(drawn(one, 50_000).svg, "cutting-flute").length),
    ).toEqual([1, 1, 0]);
    expect(
      sampleScrews.map((one) => edgesOf(drawn(one, 50_000).svg, "rounded-tip").length),
    ).toEqual([0, 0, 1]);
  });

  test("repeats a threaded head's teeth by the registry's pitch", () => {
    const locking = sampleScrews.find(({ class: kind }) => kind === "locking");
    const svg = locking === undefined ? "" : drawn(locking, 20_000).svg;
    expect(
      edgesOf(svg, "thread").some(({ attributes }) => attributes["data-pitch"] === "0.7"),
    ).toBe(true);
  });

  test("of a partially threaded screw equals its approved picture", async () => {
    const one = sampleScrews.at(-1);
    await expect(one === undefined ? "" : `${drawn(one, 50_000).svg}\n`).toMatchFileSnapshot(
      "../approved/screw-partial.svg",
    );
  });
});

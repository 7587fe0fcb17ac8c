import { describe, expect, test } from "vitest";
import { formats } from "../../lib/model/format.ts";
import { paperStyles } from "../../lib/site/paper-styles.ts";

const css = paperStyles();

describe("the paper styles", () => {
  test.each(Object.values(formats))("give $id its page in millimetres", ({ id, width, height }) => {
    expect(css).toContain(`@page ${id} { size: ${width}mm ${height}mm; margin: 0; }`);
    expect(css).toContain(`.format--${id} { page: ${id}; width: ${width}mm; height: ${height}mm;`);
  });

  test("set a pairing sheet larger on the wall than in the hand", () => {
    expect(css).toContain(
      ".sheet--pairing.format--a4-landscape { --called: 7mm; --body: 5.6mm; --note: 2.7mm;",
    );
    expect(css).toContain(
      ".sheet--plate-map.format--a5-landscape { --called: 4.4mm; --body: 3.5mm; --note: 2.5mm;",
    );
  });
});

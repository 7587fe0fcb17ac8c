import { describe, expect, it } from "vitest";
import { normalisePdf } from "../../lib/print/normalise-pdf.ts";

const pdf = (clock: string, nodes: readonly string[]) =>
  Buffer.from(
    `%PDF-1.4\n/CreationDate (D:${clock}+00'00')\n/ModDate (D:${clock}+00'00')\n${nodes.map((node) => `(node${node})`).join(" ")}\n%%EOF`,
    "latin1",
  );
const text = (bytes: Uint8Array) => Buffer.from(bytes).toString("latin1");

describe("normalising a PDF", () => {
  it("makes two prints of one page equal, whatever the clock and the counter", () => {
    const a = normalisePdf(
      pdf("20261125104749", ["00000010", "00000011", "00000010"]),
      "2026-10-01",
    );
    const b = normalisePdf(
      pdf("20310101000000", ["00000723", "00000801", "00000723"]),
      "2026-10-01",
    );
    expect(text(a)).toBe(text(b));
    expect(text(a)).toContain("D:20261001000000+00'00'");
  });

  it("keeps the length, so that every offset in the file stays true", () => {
    const raw = pdf("20261125104749", ["00000010"]);
    expect(normalisePdf(raw, "2026-10-01")).toHaveLength(raw.length);
  });

  it("keeps different structure ids apart", () => {
    const made = text(normalisePdf(pdf("20261125104749", ["00000010", "00000011"]), "2026-10-01"));
    expect(made).toContain("(node00000001) (node00000002)");
  });

  it("lists the ids in order, whichever the browser counted first", () => {
    const tree = (first: string, second: string) => {
      const [low, high] = [first, second].sort();
      const entry = (id?: string) => `(node${id}) ${id === first ? 37 : 139} 0 R`;
      const text = `/ID (node${first}) /ID (node${second})\n<</Limits [(node${low}) (node${high})]\n/Names [${entry(low)} ${entry(high)}]>>`;
      return Buffer.concat([pdf("20261125104749", []), Buffer.from(text, "latin1")]);
    };
    const rising = text(normalisePdf(tree("00000010", "00000011"), "2026-10-01"));
    const falling = text(normalisePdf(tree("00000011", "00000010"), "2026-10-01"));
    expect(falling).toBe(rising);
    expect(rising).toContain(
      "/Limits [(node00000001) (node00000002)]\n/Names [(node00000001) 37 0 R (node00000002) 139 0 R]",
    );
  });

  it("refuses a PDF without its two dates", () => {
    expect(() => normalisePdf(Buffer.from("%PDF-1.4"), "2026-10-01")).toThrow(/two dates/);
  });
});

import { describe, expect, it } from "vitest";
import type { PrintJob } from "../../lib/print/print-job.ts";
import { readBack } from "../../lib/print/read-back.ts";
import { readWithPdfjs } from "./read-with-pdfjs.ts";
import { smallPdf } from "./small-pdf.ts";

const job: PrintJob = {
  file: "pdf/x.pdf",
  title: "x",
  html: "",
  paper: [297, 210],
  pages: 1,
  texts: ["A b"],
  thumbnail: false,
};
function read(pdf: Buffer, asked: Partial<PrintJob> = {}) {
  const [one] = readBack({ pdf, seen: [] }, [{ ...job, ...asked }], "2026-10-01") ?? [];
  if (!one) throw new Error("Nothing was read");
  return one;
}
const bytes = (pdf: Buffer) => Buffer.from(read(pdf).pdf).toString("latin1");

describe("reading a print back", () => {
  it("finds the one page, its paper and the text that is drawn", () => {
    expect(read(smallPdf()).facts).toEqual({ pages: 1, overflow: [], missing: [] });
  });

  it("notices a text that is not drawn", () => {
    expect(read(smallPdf({ drawn: "<0001> Tj" })).facts.missing).toEqual(["A b"]);
  });

  it("does not take a text that is only said for one that is drawn", () => {
    const said = "/Span <</ActualText <00010002>>> BDC\n<0003> Tj\nEMC";
    expect(read(smallPdf({ drawn: said })).facts.missing).toEqual(["A b"]);
  });

  it("notices a text that a clip hides, and no longer where the clip was restored", () => {
    const clip = "q\n20 20 5 5 re\nW n\n";
    expect(read(smallPdf({ drawn: `${clip}<00010002> Tj` })).facts.missing).toEqual([
      "A b (clipped)",
    ]);
    expect(read(smallPdf({ drawn: `${clip}<0003> Tj\nQ\n<00010002> Tj` })).facts.missing).toEqual(
      [],
    );
  });

  it("tells no file of a print that has not the pages its jobs should have", () => {
    expect(readBack({ pdf: smallPdf(), seen: [] }, [job, job], "2026-10-01")).toBeUndefined();
  });

  it("notices another paper, in millimetres", () => {
    expect(read(smallPdf(), { paper: [297, 200] }).facts.overflow).toEqual([
      { what: "paper", by: 9.9 },
    ]);
  });
});

describe("two prints of one page", () => {
  it("are equal, whatever the clock and the counter", () => {
    const one = bytes(smallPdf());
    expect(bytes(smallPdf({ clock: "20310101000000", ids: ["00000723", "00000801"] }))).toBe(one);
  });

  it("are equal, whichever structure id the browser counted first", () => {
    expect(bytes(smallPdf({ ids: ["00000011", "00000010"] }))).toBe(bytes(smallPdf()));
  });

  it("differ when what is drawn differs", () => {
    expect(bytes(smallPdf({ drawn: "<00010003> Tj" }))).not.toBe(bytes(smallPdf()));
  });
});

describe("a packed PDF", () => {
  it("is read by another reader, with its own date", async () => {
    const { pages, info, size } = await readWithPdfjs(read(smallPdf()).pdf);
    expect(pages).toBe(1);
    expect(size).toEqual([841.92, 594.96]);
    expect(info["CreationDate"]).toBe("D:20261001000000+00'00'");
  });
});

describe("a PDF that is not built as expected is refused", () => {
  const text = smallPdf().toString("latin1");
  it.each([
    ["without a table", text.replace("xref\n0", "xrof\n0"), /no table of objects/],
    ["cut short", text.slice(0, -30), /no table of objects/],
    ["with an object elsewhere", text.replace("2 0 obj", "2 0 abj"), /not where the table says/],
    ["with a stream of another length", text.replace(/Length \d\d>/, "Length 11>"), /not as long/],
  ])("%s", (_, broken, says) => {
    expect(() => read(Buffer.from(broken, "latin1"))).toThrow(says);
  });
});

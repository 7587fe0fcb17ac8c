import { deflateSync, inflateSync } from "node:zlib";
import { scanContent } from "./content-stream.ts";
import { packed } from "./packed.ts";
import type { PdfObject, PdfObjects } from "./pdf-objects.ts";
import { written, writtenFine } from "./written.ts";

/** How bright the eye takes red, green and blue to be, after ITU-R BT.601. */
const brightness = (red: number, green: number, blue: number): number =>
  0.299 * red + 0.587 * green + 0.114 * blue;

const matrices = new Set(["cm", "Tm"]);

/** A settled content stream whose colours are greys. */
function greyContent(text: string): string {
  const lines: string[] = [];
  scanContent(text, (operator, operands) => {
    if (operator === "rg" || operator === "RG") {
      const [red = 0, green = 0, blue = 0] = operands.map(Number);
      lines.push(`${written(brightness(red, green, blue))} ${operator === "rg" ? "g" : "G"}`);
      return;
    }
    const write = matrices.has(operator) ? writtenFine : written;
    let line = "";
    for (const operand of operands)
      line += `${typeof operand === "number" ? write(operand) : operand} `;
    lines.push(line + operator);
  });
  return lines.join("\n");
}

/** A picture of red, green and blue bytes as one of greys. */
function greyPicture({ text, stream = Buffer.alloc(0) }: PdfObject): PdfObject {
  const colours = inflateSync(stream);
  const greys = Buffer.alloc(colours.length / 3);
  for (let at = 0; at < greys.length; at++)
    greys[at] = Math.round(
      brightness(colours[at * 3] ?? 0, colours[at * 3 + 1] ?? 0, colours[at * 3 + 2] ?? 0),
    );
  const bytes = deflateSync(greys, { level: 9 });
  return {
    text: text
      .replace("/DeviceRGB", "/DeviceGray")
      .replace(/\/Length \d+/, `/Length ${bytes.length}`),
    stream: bytes,
  };
}

/** The same document in shades of grey only, for printers that make greys of colours in ways of their own. */
export function greyObjects(pdf: PdfObjects): PdfObjects {
  const objects = new Map<number, PdfObject>();
  for (const [number, object] of pdf.objects) {
    const { text, plain } = object;
    if (text.includes("/Subtype /Image") && text.includes("/DeviceRGB"))
      objects.set(number, greyPicture(object));
    else if (plain !== undefined && !text.includes("/Length1") && !plain.startsWith("/CIDInit"))
      objects.set(number, packed(Buffer.from(greyContent(plain), "latin1"), entriesOf(text)));
    else objects.set(number, object);
  }
  return { ...pdf, objects };
}

/** What the dictionary of a packed stream says besides how it is packed. */
function entriesOf(text: string): string {
  return text.replace(/^<</, "").replace(/\/Filter \/FlateDecode\/Length \d+>>\s*$/, "");
}

/** A PDF as Chromium writes it: one page that draws "Ab", two structure ids in the order and with the numbers given, two dates. */
export function smallPdf({
  clock = "20261125104749",
  ids = ["00000010", "00000011"] as readonly [string, string],
  drawn = "<00010002> Tj",
} = {}): Buffer {
  const stream = (text: string, told = "") =>
    `<<${told}/Length ${text.length}>> stream\n${text}\nendstream`;
  const [low, high] = ids[0] < ids[1] ? ids : [ids[1], ids[0]];
  const entry = (id: string) => `(node${id}) ${id === ids[0] ? 8 : 9} 0 R`;
  const objects = [
    `<</Title (x)\n/CreationDate (D:${clock}+00'00')\n/ModDate (D:${clock}+00'00')>>`,
    "<</Type /Page\n/Resources <</Font <</F4 6 0 R>>>>\n/MediaBox [0 0 841.92 594.96]\n/Contents 5 0 R\n/Parent 3 0 R>>",
    "<</Type /Pages\n/Count 1\n/Kids [2 0 R]>>",
    "<</Type /Catalog\n/Pages 3 0 R>>",
    stream(`BT\n/F4 9 Tf\n${drawn}\nET`),
    "<</Type /Font\n/Subtype /Type0\n/ToUnicode 7 0 R>>",
    stream(
      "1 beginbfchar\n<0001> <0041>\nendbfchar\n1 beginbfrange\n<0002> <0003> <0062>\nendbfrange",
    ),
    `<</Type /StructElem\n/ID (node${ids[0]})>>`,
    `<</Type /StructElem\n/ID (node${ids[1]})>>`,
    `<</Limits [(node${low}) (node${high})]\n/Names [${entry(low)} ${entry(high)}]>>`,
  ];
  let file = "%PDF-1.4\n";
  const places = objects.map((text, index) => {
    const at = file.length;
    file += `${index + 1} 0 obj\n${text}\nendobj\n`;
    return `${String(at).padStart(10, "0")} 00000 n \n`;
  });
  const table = `xref\n0 11\n0000000000 65535 f \n${places.join("")}trailer\n<</Size 11\n/Root 4 0 R\n/Info 1 0 R>>\n`;
  return Buffer.from(`${file}${table}startxref\n${file.length}\n%%EOF\n`, "latin1");
}
